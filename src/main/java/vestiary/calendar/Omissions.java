package vestiary.calendar;

import java.util.List;

/** Why a celebration is left out for a year. Source: UNLY 14, 16, 60. */
final class Omissions {

  private Omissions() {}

  static Omission of(Celebration omitted, Celebration kept) {
    boolean optional = omitted.rank() == Rank.OPTIONAL_MEMORIAL;
    String reason =
        (optional ? "An optional memorial is left out" : "Left out this year,")
            + " because the day keeps a higher celebration, "
            + kept.name().inSentence()
            + ".";
    String source = (optional ? "UNLY 14; " : "UNLY 60; ") + kept.precedence().source();
    return new Omission(omitted.id(), omitted.name(), List.of(), reason, source);
  }
}
