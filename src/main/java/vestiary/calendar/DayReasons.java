package vestiary.calendar;

/** The one sentence that says which celebration a day keeps, in which colour, and why. */
final class DayReasons {

  private DayReasons() {}

  static String of(DayChoice choice) {
    Celebration kept = choice.kept();
    return kept.name().english()
        + why(choice)
        + " ("
        + kept.precedence().source()
        + "); "
        + colour(kept);
  }

  private static String why(DayChoice choice) {
    if (choice.transferred()) return ", moved here from another day";
    if (HolyThursday.is(choice.kept())) return HolyThursday.BESIDE_THE_WEEKDAY;
    boolean prevails = choice.kept().precedence().number() <= 11;
    if (prevails && !choice.omitted().isEmpty()) return ", before all else that falls on this day";
    if (choice.celebrations().size() == 1) return "";
    return choice.celebrations().get(1).rank() == Rank.COMMEMORATION
        ? ", with a commemoration if one is wished"
        : ", unless a memorial is chosen";
  }

  private static String colour(Celebration kept) {
    String reason = kept.colourReason();
    return Character.toLowerCase(reason.charAt(0)) + reason.substring(1);
  }
}
