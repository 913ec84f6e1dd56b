package vestiary.calendar;

import java.util.List;

/** Why a celebration is left out for a year. Source: UNLY 14, 16, 60. */
final class Omissions {

  private Omissions() {}

  static Omission of(Celebration omitted, Celebration kept) {
    boolean optional = omitted.rank() == Rank.OPTIONAL_MEMORIAL;
    Sentence.Named higher = Sentence.Named.within(kept.name());
    Sentence reason =
        optional
            ? Sentence.of(
                "An optional memorial is left out because the day keeps a higher celebration, %s.",
                higher)
            : Sentence.of(
                "Left out this year, because the day keeps a higher celebration, %s.", higher);
    String source = (optional ? "UNLY 14; " : "UNLY 60; ") + kept.precedence().source();
    return new Omission(omitted.id(), omitted.name(), List.of(), reason, source);
  }
}
