package vestiary.calendar;

/** Why a celebration is left out for a year. Source: UNLY 14, 16, 60. */
final class Omissions {

  private Omissions() {}

  static Omission of(Celebration omitted, Celebration kept) {
    String reason =
        omitted.rank() == Rank.OPTIONAL_MEMORIAL
            ? "An optional memorial gives way to " + name(kept) + "."
            : name(kept) + " stands higher in the table of liturgical days.";
    return new Omission(omitted.id(), omitted.name(), reason, source(omitted, kept));
  }

  private static String source(Celebration omitted, Celebration kept) {
    String rule = omitted.rank() == Rank.OPTIONAL_MEMORIAL ? "UNLY 14" : "UNLY 60";
    return rule + "; " + kept.precedence().source();
  }

  private static String name(Celebration celebration) {
    return celebration.name().english();
  }
}
