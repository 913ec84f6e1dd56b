package vestiary.allocation;

import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Hands pieces out as a sacristan would who has plenty: what lies there from the Mass before, else
 * a piece not used yet, else the one that is free the longest. It hardly looks at any other piece,
 * so that weeks without a shortage cost little.
 */
final class FirstHand {

  /** So many pieces in use are asked after before it gives up. */
  private static final int MOST_ASKED = 64;

  private static final int NONE = -1;

  private final Succession succession;
  private final Eligibility eligibility;
  private final Map<Integer, Set<Integer>> atChurch = new HashMap<>();
  private final Set<Integer> inUse = new LinkedHashSet<>();
  private final Map<Integer, Integer> last = new HashMap<>();
  private final BitSet unused = new BitSet();

  FirstHand(Succession succession, Eligibility eligibility) {
    this.succession = succession;
    this.eligibility = eligibility;
    unused.set(0, eligibility.pieces());
  }

  /**
   * Whether it gets through; if not, nothing is known.
   *
   * @param inTurn in an order in which what precedes stands before what follows
   */
  boolean serves(List<Integer> inTurn) {
    for (int need : inTurn) {
      int piece = there(need);
      piece = piece == NONE ? unused(need) : piece;
      piece = piece == NONE ? elsewhere(need) : piece;
      if (piece == NONE) {
        return false;
      }
      last.put(piece, need);
      inUse.add(piece);
      atChurch.computeIfAbsent(succession.church(need), none -> new LinkedHashSet<>()).add(piece);
    }
    return true;
  }

  private int there(int need) {
    int piece = free(atChurch.getOrDefault(succession.church(need), Set.of()), need);
    if (piece != NONE) {
      putDown(piece);
    }
    return piece;
  }

  private int unused(int need) {
    BitSet free = (BitSet) unused.clone();
    free.and(eligibility.of(need));
    int piece = free.nextSetBit(0);
    if (piece >= 0) {
      unused.clear(piece);
    }
    return piece;
  }

  private int elsewhere(int need) {
    int piece = free(inUse, need);
    if (piece != NONE) {
      putDown(piece);
    }
    return piece;
  }

  private int free(Iterable<Integer> pieces, int need) {
    int asked = 0;
    for (int piece : pieces) {
      if (eligibility.of(need).get(piece) && succession.precedes(last.get(piece), need)) {
        return piece;
      }
      if (++asked == MOST_ASKED) {
        return NONE;
      }
    }
    return NONE;
  }

  private void putDown(int piece) {
    inUse.remove(piece);
    atChurch.get(succession.church(last.get(piece))).remove(piece);
  }
}
