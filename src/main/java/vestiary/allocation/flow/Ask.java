package vestiary.allocation.flow;

import java.util.List;
import vestiary.allocation.plan.Displeasure;
import vestiary.allocation.plan.Fit;
import vestiary.allocation.plan.Occasion;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.plan.Traits;
import vestiary.allocation.plan.WholeSets;
import vestiary.calendar.Colour;
import vestiary.vesting.ColourMatch;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Step;

/**
 * All that decides which piece serves a need, and how gladly; many needs ask the same.
 *
 * @param mate the set of what the wearer has on already, so that only that set's piece makes it
 *     whole; empty if nothing is settled, {@link #NO_SET} if nothing can make it whole
 */
public record Ask(
    PieceKind kind,
    Colour colour,
    boolean festive,
    List<Step> ladder,
    Occasion occasion,
    Fit fit,
    String mate) {

  /** No code of a set. */
  static final String NO_SET = " ";

  /** A piece does not serve. */
  public static final int NEVER = -1;

  public static Ask of(Need need, Situation situation) {
    return new Ask(
        need.kind(),
        need.colour(),
        need.festive(),
        need.ladder(),
        situation.occasion(need),
        situation.fit(need),
        "");
  }

  /** The same beside something that is settled. */
  Ask beside(String set) {
    return new Ask(kind, colour, festive, ladder, occasion, fit, set);
  }

  /** How far down the ladder a piece serves, 0 being no substitute; {@link #NEVER} if it cannot. */
  public int depth(Piece piece, Traits traits) {
    if (piece.kind() != kind || (fit.must() && !fit.suits(traits.length()))) {
      return NEVER;
    }
    if (ColourMatch.of(piece.colours(), colour, festive).serves()) {
      return 0;
    }
    if (!ColourMatch.mayStandFor(piece.colours(), colour)) {
      return NEVER;
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

  /** What people would rather have otherwise, weighted. */
  int displeasure(Piece piece, Traits traits) {
    return Displeasure.at(occasion, fit, traits)
        + (mate.isEmpty() || mate.equals(piece.set()) ? 0 : Displeasure.MIXED.weight());
  }

  /** The same where no piece is worn. */
  int displeasureWithout() {
    boolean isStole = WholeSets.findOuter(kind).isPresent();
    return isStole && !mate.isEmpty() ? Displeasure.MIXED.weight() : 0;
  }
}
