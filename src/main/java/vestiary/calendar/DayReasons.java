package vestiary.calendar;

import java.util.ArrayList;
import java.util.List;

/** Says of a day what is kept and why, in one sentence and rule by rule. */
final class DayReasons {

  private static final Reason PRESENT_NORMS =
      new Reason(
          Sentence.of("This is the day by present norms; the norm was another in that year."),
          "Notitiae 20 (1984), 26 (1990) 160, 42 (2006) 96");

  private DayReasons() {}

  /** For example "The Most Holy Trinity, before Saint ... (UNLY 59 I.3); white, for ...". */
  static Sentence sentence(Day day) {
    Celebration kept = day.kept();
    return new Sentence(
        "%s%s (%s); %s",
        List.of(
            Sentence.Named.alone(kept.name()),
            why(day),
            kept.precedence().source(),
            new Sentence.Cited(kept.colourReason(), false)));
  }

  private static Sentence why(Day day) {
    if (!day.transfers().isEmpty()) {
      return Sentence.of(", moved here from %s", day.transfers().get(0).from());
    }
    if (HolyThursday.is(day.kept())) return HolyThursday.BESIDE_THE_WEEKDAY;
    boolean prevails = day.kept().precedence().number() <= 11;
    if (prevails && !day.omitted().isEmpty()) return insteadOf(day.omitted().get(0));
    if (day.celebrations().size() == 1) return Sentence.NOTHING;
    return day.celebrations().get(1).rank() == Rank.COMMEMORATION
        ? Sentence.of(", with a commemoration if one is wished")
        : Sentence.of(", unless a memorial is chosen");
  }

  private static Sentence insteadOf(Omission omitted) {
    Sentence.Named name = Sentence.Named.within(omitted.name());
    return omitted.isKeptElsewhere()
        ? Sentence.of(", while %s is kept on %s", name, omitted.keptOn().get(0))
        : Sentence.of(", which stands before %s", name);
  }

  /** Season, place in the table, what gave way, what may be chosen, colour, duty, evening. */
  static List<Reason> chain(Day day) {
    List<Reason> chain = new ArrayList<>();
    chain.add(season(day));
    day.transfers().forEach(t -> chain.add(arrival(day.kept(), t)));
    chain.add(place(day.kept()));
    day.omitted().forEach(o -> chain.add(omission(o)));
    if (day.celebrations().size() > 1 && !HolyThursday.is(day.kept())) chain.add(choice(day));
    chain.add(day.kept().colourReason());
    chain.add(new Reason(day.duty().why(), day.duty().source()));
    chain.add(new Reason(day.evening().why(), day.evening().source()));
    if (day.isByPresentNorms()) chain.add(PRESENT_NORMS);
    return List.copyOf(chain);
  }

  private static Reason season(Day day) {
    Sentence season =
        switch (day.season()) {
          case ADVENT -> Sentence.of("Advent");
          case CHRISTMAS -> Sentence.of("Christmas Time");
          case ORDINARY -> Sentence.of("Ordinary Time");
          case LENT -> Sentence.of("Lent");
          case TRIDUUM -> Sentence.of("the Paschal Triduum");
          case EASTER -> Sentence.of("Easter Time");
        };
    Sentence place =
        day.week() == 0 || day.season() == Season.TRIDUUM
            ? Sentence.of("%s is in %s.", day.date(), season)
            : Sentence.of(
                "%s is in the %s week of %s.",
                day.date(), new Sentence.Ordinal(day.week()), season);
    return new Reason(place, sourceOf(day.season()));
  }

  private static String sourceOf(Season season) {
    return switch (season) {
      case ADVENT -> "UNLY 39 to 42";
      case CHRISTMAS -> "UNLY 32 to 38";
      case ORDINARY -> "UNLY 43, 44";
      case LENT -> "UNLY 27 to 31";
      case TRIDUUM -> "UNLY 18 to 21";
      case EASTER -> "UNLY 22 to 26";
    };
  }

  private static Reason arrival(Celebration kept, Transfer transfer) {
    return new Reason(
        Sentence.of(
            "%s comes here from %s, because %s",
            Sentence.Named.atHead(kept.name()), transfer.from(), transfer.why()),
        transfer.source());
  }

  private static Reason place(Celebration kept) {
    return new Reason(
        Sentence.of(
            "%s stands at number %d of the table of liturgical days; the lowest number is kept.",
            Sentence.Named.atHead(kept.name()), kept.precedence().number()),
        kept.precedence().source());
  }

  private static Reason omission(Omission omitted) {
    return new Reason(
        new Sentence(
            "%s: %s",
            List.of(Sentence.Named.alone(omitted.name()), new Sentence.Lowered(omitted.why()))),
        omitted.source());
  }

  private static Reason choice(Day day) {
    return day.celebrations().get(1).rank() == Rank.COMMEMORATION
        ? new Reason(
            Sentence.of("A saint of the day may have the collect; Mass and colour are the day's."),
            "GIRM 355 a; UNLY 16 b")
        : new Reason(
            Sentence.of("The weekday's Mass is said unless a memorial of the day is chosen."),
            "UNLY 14; GIRM 355");
  }
}
