package vestiary.calendar;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a church adds to the calendar of its country, as entries of the table: its title and its
 * dedication as solemnities, the celebrations of its diocese as these are placed.
 *
 * <p>Of two that name the same celebration the higher place holds, so that a patron of the diocese,
 * a feast there, is a solemnity in the church of that title. Source: UNLY 49 to 56, 59.
 */
final class ChurchPropers {

  private static final LocalName DEDICATION =
      new LocalName(
          "Anniversary of the Dedication of This Church",
          "In anniversario dedicationis huius ecclesiae",
          "Aniversario de la dedicación de esta iglesia");

  private final ChurchCalendar church;
  private final List<Proper.OnSunday> onSunday = new ArrayList<>();
  private final List<Decision> decisions = new ArrayList<>();
  private final List<String> inscribed = new ArrayList<>();
  private final Set<String> patrons = new HashSet<>();

  ChurchPropers(ChurchCalendar church) {
    this.church = church;
  }

  /**
   * Lays all propers over the calendar, those that name a celebration after those that bring one.
   *
   * @throws IllegalArgumentException if one names a celebration that there is not
   */
  void lay(List<Proper> propers) {
    propers.stream().filter(Proper.Inscribed.class::isInstance).forEach(p -> lay(p, propers));
    propers.stream().filter(p -> !(p instanceof Proper.Inscribed)).forEach(p -> lay(p, propers));
  }

  /** The celebrations that the calendar of the country does not have. */
  List<String> inscribed() {
    return inscribed;
  }

  List<Proper.OnSunday> onSunday() {
    return onSunday;
  }

  List<Decision> decisions() {
    return decisions;
  }

  /** Whether this is a principal patron of the place, the diocese, a region or an order. */
  boolean isPatron(String celebration) {
    return patrons.contains(celebration);
  }

  private void lay(Proper proper, List<Proper> all) {
    if (proper instanceof Proper.Titular titular) {
      raised(titular).ifPresent(church::addProper);
    } else if (proper instanceof Proper.OwnTitular own) {
      church.addProper(ownTitle(own));
    } else if (proper instanceof Proper.Dedication dedication) {
      church.addProper(dedication(dedication));
    } else if (proper instanceof Proper.Inscribed inscribed) {
      inscribe(inscribed, all);
    } else if (proper instanceof Proper.Placed placed) {
      place(placed.celebration(), placed.place(), known(placed.celebration()).when(), true);
    } else if (proper instanceof Proper.Moved moved) {
      place(moved.celebration(), moved.place(), DateRule.on(moved.day()), false);
    } else if (proper instanceof Proper.OnSunday sunday) {
      onSunday.add(sunday);
    } else if (proper instanceof Proper.KeptOn kept) {
      decisions.add(Decision.from(kept));
    }
  }

  private Optional<Entry> raised(Proper.Titular titular) {
    Entry known = church.findTitle(titular.celebration()).orElseThrow(() -> noTitle(titular));
    if (known.rank() == Rank.SOLEMNITY) return Optional.empty();
    Precedence place = Precedence.OWN_TITULAR;
    Entry solemnity = known.with(Rank.SOLEMNITY, place, "Title of this church; " + place.source());
    return Optional.of(solemnity.withYears(0, Integer.MAX_VALUE));
  }

  /** Whether a church may bear it: no plain day of a season and no Mass beside the day's. */
  static boolean canBeTitle(Entry entry) {
    boolean isCelebration = entry.rank() != Rank.FERIA && entry.rank() != Rank.SUNDAY;
    return isCelebration && !entry.isSeparateMass() && !isEasterWeekday(entry);
  }

  /** Whether a proper may name it: no day of the season itself and no Mass beside the day's. */
  static boolean canBePlaced(Entry entry) {
    return !entry.isSeparateMass() && !entry.isDayOfTheSeason();
  }

  private static boolean isEasterWeekday(Entry entry) {
    return entry.precedence() == Precedence.EASTER_OCTAVE;
  }

  private static Entry ownTitle(Proper.OwnTitular own) {
    return proper(
        Proper.OwnTitular.CELEBRATION,
        own.name(),
        Rank.SOLEMNITY,
        Precedence.OWN_TITULAR,
        own.colour(),
        new Reason(Sentence.of("%s, as this church keeps its title.", own.colour()), "GIRM 346"),
        own.day());
  }

  private static Entry dedication(Proper.Dedication dedication) {
    return proper(
        Proper.Dedication.CELEBRATION,
        DEDICATION,
        Rank.SOLEMNITY,
        Precedence.OWN_DEDICATION,
        Colour.WHITE,
        new Reason(Sentence.of("White, for the dedication of a church."), "common practice"),
        dedication.day());
  }

  /** The cathedral keeps one dedication, its own: the diocese's feast is the same day. */
  private void inscribe(Proper.Inscribed inscribed, List<Proper> all) {
    boolean isItsOwn =
        inscribed.place() == ProperPlace.DEDICATION_OF_THE_CATHEDRAL
            && all.contains(new Proper.Dedication(inscribed.day()));
    if (isItsOwn) return;
    this.inscribed.add(inscribed.celebration());
    ProperPlace place = inscribed.place();
    if (place.isPrincipalPatron()) patrons.add(inscribed.celebration());
    church.addProper(
        proper(
            inscribed.celebration(),
            inscribed.name(),
            place.rank(),
            place.precedence(),
            inscribed.colour(),
            new Reason(Sentence.of("%s, as its proper has it.", inscribed.colour()), "GIRM 346"),
            inscribed.day()));
  }

  /** A celebration that stands higher in the wider calendar keeps that place. */
  private void place(String id, ProperPlace place, DateRule when, boolean onItsDay) {
    Entry known = known(id);
    if (place.isPrincipalPatron()) patrons.add(id);
    if (onItsDay && known.precedence().isBefore(place.precedence())) return;
    String source = "Proper of this church; " + place.precedence().source();
    Entry placed = known.with(place.rank(), place.precedence(), source);
    church.addProper(placed.withYears(0, Integer.MAX_VALUE).on(when, onItsDay && known.movable()));
  }

  private Entry known(String id) {
    return church
        .find(id)
        .filter(ChurchPropers::canBePlaced)
        .orElseThrow(() -> unknown(id, "be kept as a proper"));
  }

  private IllegalArgumentException noTitle(Proper.Titular titular) {
    return unknown(titular.celebration(), "be the title of a church");
  }

  private IllegalArgumentException unknown(String id, String be) {
    return new IllegalArgumentException(
        "No celebration \"%s\" of the calendar \"%s\" can %s."
            .formatted(id, church.settings().calendar(), be));
  }

  private static Entry proper(
      String id,
      LocalName name,
      Rank rank,
      Precedence place,
      Colour colour,
      Reason why,
      MonthDay day) {
    Celebration celebration =
        new Celebration(
            id,
            name,
            rank,
            place,
            List.of(colour),
            "Proper of this church; " + place.source(),
            why);
    return new Entry(celebration, DateRule.on(day), false, Set.of(), "", 0, Integer.MAX_VALUE);
  }
}
