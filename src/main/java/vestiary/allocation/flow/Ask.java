package vestiary.allocation.flow;

import java.util.List;
import vestiary.allocation.plan.Fit;
import vestiary.allocation.plan.Occasion;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.plan.Traits;
import vestiary.calendar.Colour;
import vestiary.vesting.ColourMatch;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Step;

/** All that decides which piece serves a need, and how gladly; many needs ask the same. */
public record Ask(
    PieceKind kind, Colour colour, boolean festive, List<Step> ladder, Occasion occasion, Fit fit) {

  /** A piece does not serve. */
  public static final int NEVER = -1;

  private static final int OTHER_GRADE = 4;
  private static final int OTHER_SHADE = 4;
  private static final int BAD_FIT = 6;

  public static Ask of(Need need, Situation situation) {
    return new Ask(
        need.kind(),
        need.colour(),
        need.festive(),
        need.ladder(),
        situation.occasion(need),
        situation.fit(need));
  }

  /** How far down the ladder a piece serves, 0 being no substitute; {@link #NEVER} if it cannot. */
  public int depth(Piece piece, Traits traits) {
    if (piece.kind() != kind || (fit.must() && !fit.suits(traits.length()))) {
      return NEVER;
    }
    if (ColourMatch.of(piece.colours(), colour, festive).serves()) {
      return 0;
    }
    for (int depth = 1; depth <= ladder.size(); depth++) {
      Step step = ladder.get(depth - 1);
      if (!step.isWithout()
          && ColourMatch.of(piece.colours(), step.colourFor(colour), festive).serves()) {
        return depth;
      }
    }
    return NEVER;
  }

  /** How far down the ladder the piece may be left out; {@link #NEVER} if it may not. */
  public int depthWithout() {
    for (int depth = 1; depth <= ladder.size(); depth++) {
      if (ladder.get(depth - 1).isWithout()) {
        return depth;
      }
    }
    return NEVER;
  }

  /** What people would rather have otherwise, weighted; common practice, no source. */
  public int displeasure(Traits traits) {
    return (differ(occasion.grade(), traits.grade()) ? OTHER_GRADE : 0)
        + (differ(occasion.shade(), traits.shade()) ? OTHER_SHADE : 0)
        + (fit.suits(traits.length()) ? 0 : BAD_FIT);
  }

  private static boolean differ(String wanted, String given) {
    return !wanted.isEmpty() && !given.isEmpty() && !wanted.equals(given);
  }
}
