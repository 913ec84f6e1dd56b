package vestiary.calendar;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a church's title and dedication become in its calendar: solemnities of that church.
 *
 * <p>A title that is a solemnity already keeps its rank. Source: UNLY 52 c, 59 I.4.
 */
final class ChurchPropers {

  private static final LocalName DEDICATION =
      new LocalName(
          "Anniversary of the Dedication of This Church",
          "In anniversario dedicationis huius ecclesiae",
          "Aniversario de la dedicación de esta iglesia");

  private ChurchPropers() {}

  /** What this adds or raises; empty for a title that is a solemnity already. */
  static Optional<Entry> entry(Proper proper, ChurchCalendar church) {
    if (proper instanceof Proper.Titular titular) return raised(titular, church);
    if (proper instanceof Proper.OwnTitular own) return Optional.of(ownTitle(own));
    return Optional.of(dedication((Proper.Dedication) proper));
  }

  private static Optional<Entry> raised(Proper.Titular titular, ChurchCalendar church) {
    Entry known =
        church
            .find(titular.celebration())
            .filter(ChurchPropers::canBeTitle)
            .orElseThrow(() -> unknown(titular, church));
    if (known.rank() == Rank.SOLEMNITY) return Optional.empty();
    Precedence place = Precedence.OWN_TITULAR;
    Entry solemnity = known.with(Rank.SOLEMNITY, place, "Title of this church; " + place.source());
    return Optional.of(solemnity.withYears(0, Integer.MAX_VALUE));
  }

  /** No church is dedicated in honour of a Sunday or a weekday of the seasons. */
  static boolean canBeTitle(Entry entry) {
    boolean isCelebration = entry.rank() != Rank.FERIA && entry.rank() != Rank.SUNDAY;
    return isCelebration && !entry.isSeparateMass() && !isEasterWeekday(entry);
  }

  private static boolean isEasterWeekday(Entry entry) {
    return entry.precedence() == Precedence.EASTER_OCTAVE;
  }

  private static IllegalArgumentException unknown(Proper.Titular titular, ChurchCalendar church) {
    return new IllegalArgumentException(
        "No celebration \""
            + titular.celebration()
            + "\" of the calendar \""
            + church.settings().calendar()
            + "\" can be the title of a church.");
  }

  private static Entry ownTitle(Proper.OwnTitular own) {
    String why = capitalised(own.colour().id()) + ", as this church keeps its title (GIRM 346).";
    return proper(
        "titular-of-this-church", own.name(), Precedence.OWN_TITULAR, own.colour(), why, own.day());
  }

  private static Entry dedication(Proper.Dedication dedication) {
    return proper(
        "dedication-of-this-church",
        DEDICATION,
        Precedence.OWN_DEDICATION,
        Colour.WHITE,
        "White, for the dedication of a church (common practice).",
        dedication.day());
  }

  private static Entry proper(
      String id, LocalName name, Precedence place, Colour colour, String why, MonthDay day) {
    Celebration celebration =
        new Celebration(
            id,
            name,
            Rank.SOLEMNITY,
            place,
            List.of(colour),
            "Proper of this church; " + place.source(),
            why);
    return new Entry(celebration, DateRule.on(day), false, Set.of(), "", 0, Integer.MAX_VALUE);
  }

  private static String capitalised(String word) {
    return Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }
}
