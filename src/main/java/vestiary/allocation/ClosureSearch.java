package vestiary.allocation;

import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Looks for a proof that one need may go without: starting from the pieces that serve it, and
 * growing them by those of other needs, fewest pieces first, until more needs clash with it and one
 * another than there are pieces.
 */
final class ClosureSearch {

  /** After so many sets of pieces the search gives up; small parishes never come near it. */
  private static final int MOST_CLOSURES = 500;

  private record Closure(BitSet pieces, int size, int turn) {}

  private final int need;
  private final Succession succession;
  private final Eligibility eligibility;
  private final int[] nearby;
  private final List<BitSet> classes;
  private final PriorityQueue<Closure> open =
      new PriorityQueue<>(Comparator.comparingInt(Closure::size).thenComparingInt(Closure::turn));
  private final Set<BitSet> seen = new HashSet<>();

  ClosureSearch(int need, int[] block, Succession succession, Eligibility eligibility) {
    this.need = need;
    this.succession = succession;
    this.eligibility = eligibility;
    this.nearby =
        IntStream.of(block)
            .filter(other -> other == need || succession.clash(need, other))
            .toArray();
    this.classes = IntStream.of(nearby).mapToObj(eligibility::of).distinct().toList();
  }

  /** The needs of the proof, in ascending order; empty if there is none. */
  List<Integer> find() {
    int own = eligibility.count(eligibility.of(need));
    if (nearby.length <= own) {
      return List.of();
    }
    int most = LargestClashingSet.of(nearby, succession).length;
    offer(eligibility.of(need));
    for (int closures = 0; closures < MOST_CLOSURES && hasNext(most); closures++) {
      BitSet pieces = open.remove().pieces();
      List<Integer> set = proofWithin(pieces);
      if (!set.isEmpty()) {
        return set;
      }
      grow(pieces);
    }
    return List.of();
  }

  private boolean hasNext(int most) {
    return !open.isEmpty() && open.peek().size() < most;
  }

  private void offer(BitSet pieces) {
    if (seen.add(pieces)) {
      open.add(new Closure(pieces, eligibility.count(pieces), seen.size()));
    }
  }

  private void grow(BitSet pieces) {
    for (BitSet other : classes) {
      if (other.intersects(pieces)) {
        BitSet grown = (BitSet) pieces.clone();
        grown.or(other);
        offer(grown);
      }
    }
  }

  private List<Integer> proofWithin(BitSet pieces) {
    int available = eligibility.count(pieces);
    Set<BitSet> within = new HashSet<>(classes);
    within.removeIf(other -> !isWithin(other, pieces));
    int[] members =
        IntStream.of(nearby).filter(other -> within.contains(eligibility.of(other))).toArray();
    while (members.length > available) {
      int[] clashing = LargestClashingSet.of(members, succession);
      if (clashing.length <= available) {
        return List.of();
      }
      List<Integer> critical = CriticalPart.of(clashing, eligibility);
      if (critical.contains(need)) {
        return eligibility.connected(need, critical);
      }
      // What is short without this need is another's finding; look on among the rest.
      members = IntStream.of(members).filter(other -> !critical.contains(other)).toArray();
    }
    return List.of();
  }

  private static boolean isWithin(BitSet one, BitSet other) {
    BitSet beyond = (BitSet) one.clone();
    beyond.andNot(other);
    return beyond.isEmpty();
  }
}
