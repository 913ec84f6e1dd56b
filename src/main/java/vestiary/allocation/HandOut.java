package vestiary.allocation;

import java.util.BitSet;
import java.util.Collection;
import java.util.List;

/**
 * Whether the pieces can serve all of some needs. A quick hand goes first and is right wherever it
 * gets through; where it does not, every way is tried, as far as a limit of steps allows.
 */
final class HandOut {

  /** What was found; a search may give up, and then nothing is known. */
  enum Outcome {
    ALL_SERVED,
    ONE_WITHOUT,
    GIVEN_UP
  }

  /** A step looks at one piece for one need: about a millisecond's work. */
  private static final long MOST_STEPS_AT_ONCE = 100_000;

  private static final int NONE = -1;

  private final Succession succession;
  private final Eligibility eligibility;
  private final int[] wanted;
  private final int[] last;
  private long steps;

  HandOut(Succession succession, Eligibility eligibility) {
    this.succession = succession;
    this.eligibility = eligibility;
    this.wanted = new int[eligibility.places()];
    this.last = new int[eligibility.places()];
  }

  /** Allows so many steps for all questions from now on. */
  void allow(long mostSteps) {
    steps = mostSteps;
  }

  Outcome of(Collection<Integer> needs) {
    if (servesQuickly(needs)) {
      return Outcome.ALL_SERVED;
    }
    int[] inTurn = succession.inTurn(needs).stream().mapToInt(Integer::intValue).toArray();
    HandOutSearch search =
        new HandOutSearch(inTurn, succession, eligibility, Math.min(steps, MOST_STEPS_AT_ONCE));
    Outcome outcome = search.run();
    steps -= search.steps();
    return outcome;
  }

  /**
   * Lets a first hand try; then gives each need in turn the piece that serves fewest, among those
   * the one in use last. Where that gets through all can be served; else nothing is known.
   */
  boolean servesQuickly(Collection<Integer> needs) {
    List<Integer> inTurn = succession.inTurn(needs);
    if (new FirstHand(succession, eligibility).serves(inTurn)) {
      return true;
    }
    forget(inTurn);
    for (int need : inTurn) {
      BitSet own = eligibility.of(need);
      for (int piece = own.nextSetBit(0); piece >= 0; piece = own.nextSetBit(piece + 1)) {
        wanted[piece]++;
      }
    }
    for (int need : inTurn) {
      int piece = quickest(need);
      if (piece == NONE) {
        return false;
      }
      last[piece] = need;
    }
    return true;
  }

  private void forget(List<Integer> needs) {
    BitSet all = new BitSet();
    needs.forEach(need -> all.or(eligibility.of(need)));
    for (int piece = all.nextSetBit(0); piece >= 0; piece = all.nextSetBit(piece + 1)) {
      wanted[piece] = 0;
      last[piece] = NONE;
    }
  }

  private int quickest(int need) {
    int best = NONE;
    BitSet own = eligibility.of(need);
    int most = eligibility.pieces();
    for (int piece = own.nextSetBit(0); piece >= 0 && piece < most; ) {
      boolean better = best == NONE || isBetter(piece, best);
      if (better && (last[piece] == NONE || succession.precedes(last[piece], need))) {
        best = piece;
      }
      piece = own.nextSetBit(piece + 1);
    }
    return best;
  }

  private boolean isBetter(int piece, int best) {
    return wanted[piece] < wanted[best]
        || (wanted[piece] == wanted[best] && freeSince(piece) > freeSince(best));
  }

  private long freeSince(int piece) {
    return last[piece] == NONE ? Long.MIN_VALUE : succession.cleared(last[piece]);
  }
}
