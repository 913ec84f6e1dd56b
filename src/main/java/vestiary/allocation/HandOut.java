package vestiary.allocation;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;

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

  private final Succession succession;
  private final Eligibility eligibility;
  private long steps;

  /**
   * @param mostSteps for all questions together
   */
  HandOut(Succession succession, Eligibility eligibility, long mostSteps) {
    this.succession = succession;
    this.eligibility = eligibility;
    this.steps = mostSteps;
  }

  Outcome of(Collection<Integer> needs) {
    int[] inTurn = succession.inTurn(needs).stream().mapToInt(Integer::intValue).toArray();
    if (servesQuickly(inTurn)) {
      return Outcome.ALL_SERVED;
    }
    HandOutSearch search =
        new HandOutSearch(inTurn, succession, eligibility, Math.min(steps, MOST_STEPS_AT_ONCE));
    Outcome outcome = search.run();
    steps -= search.steps();
    return outcome;
  }

  /** Gives each need in turn the piece that serves fewest, among those the one in use last. */
  private boolean servesQuickly(int[] inTurn) {
    Map<Integer, Integer> wanted = new HashMap<>();
    for (int need : inTurn) {
      for (int piece : eligibility.piecesOf(need)) {
        wanted.merge(piece, 1, Integer::sum);
      }
    }
    Map<Integer, Integer> last = new HashMap<>();
    for (int need : inTurn) {
      int best = -1;
      for (int piece : eligibility.piecesOf(need)) {
        Integer before = last.get(piece);
        boolean free = before == null || succession.precedes(before, need);
        if (free && (best < 0 || isBetter(piece, best, wanted, last))) {
          best = piece;
        }
      }
      if (best < 0) {
        return false;
      }
      last.put(best, need);
    }
    return true;
  }

  private boolean isBetter(
      int piece, int best, Map<Integer, Integer> wanted, Map<Integer, Integer> last) {
    int fewer = Integer.compare(wanted.get(piece), wanted.get(best));
    return fewer < 0 || (fewer == 0 && freeSince(piece, last) > freeSince(best, last));
  }

  private long freeSince(int piece, Map<Integer, Integer> last) {
    return last.containsKey(piece) ? succession.cleared(last.get(piece)) : Long.MIN_VALUE;
  }
}
