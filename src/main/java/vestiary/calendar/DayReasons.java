package vestiary.calendar;

import java.util.ArrayList;
import java.util.List;

/** Says of a day what is kept and why, in one sentence and rule by rule. */
final class DayReasons {

  private static final Reason PRESENT_NORMS =
      new Reason(
          "This is the day by present norms; the norm was another in that year.",
          "Notitiae 20 (1984), 26 (1990) 160, 42 (2006) 96");

  private DayReasons() {}

  /** For example "The Most Holy Trinity, before Saint ... (UNLY 59 I.3); white, for ...". */
  static String sentence(Day day) {
    Celebration kept = day.kept();
    return kept.name().english()
        + why(day)
        + " ("
        + kept.precedence().source()
        + "); "
        + lowered(kept.colourReason().cited());
  }

  private static String why(Day day) {
    if (!day.transfers().isEmpty()) {
      return ", moved here from " + Dates.spelled(day.transfers().get(0).from());
    }
    if (HolyThursday.is(day.kept())) return HolyThursday.BESIDE_THE_WEEKDAY;
    boolean prevails = day.kept().precedence().number() <= 11;
    if (prevails && !day.omitted().isEmpty()) return insteadOf(day.omitted().get(0));
    if (day.celebrations().size() == 1) return "";
    return day.celebrations().get(1).rank() == Rank.COMMEMORATION
        ? ", with a commemoration if one is wished"
        : ", unless a memorial is chosen";
  }

  private static String insteadOf(Omission omitted) {
    String name = omitted.name().inSentence();
    return omitted.isKeptElsewhere()
        ? ", while " + name + " is kept on " + Dates.spelled(omitted.keptOn().get(0))
        : ", which stands before " + name;
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
    chain.add(new Reason(day.duty().reason(), day.duty().source()));
    chain.add(new Reason(day.evening().reason(), day.evening().source()));
    if (day.isByPresentNorms()) chain.add(PRESENT_NORMS);
    return List.copyOf(chain);
  }

  private static Reason season(Day day) {
    String season =
        switch (day.season()) {
          case ADVENT -> "Advent";
          case CHRISTMAS -> "Christmas Time";
          case ORDINARY -> "Ordinary Time";
          case LENT -> "Lent";
          case TRIDUUM -> "the Paschal Triduum";
          case EASTER -> "Easter Time";
        };
    String week =
        day.week() == 0 || day.season() == Season.TRIDUUM
            ? " is in " + season
            : " is in the " + lowered(OrdinalNames.english(day.week())) + " week of " + season;
    return new Reason(Dates.spelled(day.date()) + week + ".", sourceOf(day.season()));
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
    String sentence =
        "%s comes here from %s, because %s"
            .formatted(
                raised(kept.name().inSentence()),
                Dates.spelled(transfer.from()),
                transfer.reason());
    return new Reason(sentence, transfer.source());
  }

  private static Reason place(Celebration kept) {
    String sentence =
        "%s stands at number %d of the table of liturgical days; the lowest number is kept."
            .formatted(raised(kept.name().inSentence()), kept.precedence().number());
    return new Reason(sentence, kept.precedence().source());
  }

  private static Reason omission(Omission omitted) {
    return new Reason(
        omitted.name().english() + ": " + lowered(omitted.reason()), omitted.source());
  }

  private static Reason choice(Day day) {
    return day.celebrations().get(1).rank() == Rank.COMMEMORATION
        ? new Reason(
            "A saint of the day may have the collect; Mass and colour are the day's.",
            "GIRM 355 a; UNLY 16 b")
        : new Reason(
            "The weekday's Mass is said unless a memorial of the day is chosen.",
            "UNLY 14; GIRM 355");
  }

  private static String raised(String sentence) {
    return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
  }

  private static String lowered(String sentence) {
    return Character.toLowerCase(sentence.charAt(0)) + sentence.substring(1);
  }
}
