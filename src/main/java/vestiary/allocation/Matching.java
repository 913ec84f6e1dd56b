package vestiary.allocation;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * A largest matching of lefts to rights in a bipartite graph. Cost: edges times the root of the
 * number of lefts.
 *
 * <p>Source: J. Hopcroft, R. Karp, "An n^5/2 algorithm for maximum matchings in bipartite graphs"
 * (1973; from memory).
 */
final class Matching {

  private static final int NONE = -1;

  private final int[][] neighbours;
  private final int[] rightOf;
  private final int[] leftOf;
  private final int[] layer;

  private Matching(int[][] neighbours, int rights) {
    this.neighbours = neighbours;
    this.rightOf = new int[neighbours.length];
    this.leftOf = new int[rights];
    this.layer = new int[neighbours.length];
    Arrays.fill(rightOf, NONE);
    Arrays.fill(leftOf, NONE);
  }

  /**
   * A largest matching.
   *
   * @param neighbours for each left, the rights it may be matched to
   * @param rights how many there are
   */
  static Matching largest(int[][] neighbours, int rights) {
    Matching matching = new Matching(neighbours, rights);
    while (matching.layOut()) {
      matching.free().forEach(matching::augment);
    }
    return matching;
  }

  /**
   * A largest matching, where few of many rights are named.
   *
   * @param neighbours for each left, the rights it may be matched to, by any numbers
   */
  static Matching largest(int[][] neighbours) {
    Map<Integer, Integer> rights = new HashMap<>();
    int[][] few = renumbered(neighbours, rights);
    return largest(few, rights.size());
  }

  /** As {@link #inOrder(int[][], int)}, where few of many rights are named. */
  static Matching inOrder(int[][] neighbours) {
    Map<Integer, Integer> rights = new HashMap<>();
    int[][] few = renumbered(neighbours, rights);
    return inOrder(few, rights.size());
  }

  private static int[][] renumbered(int[][] neighbours, Map<Integer, Integer> numbers) {
    int[][] few = new int[neighbours.length][];
    for (int left = 0; left < few.length; left++) {
      few[left] = new int[neighbours[left].length];
      for (int at = 0; at < few[left].length; at++) {
        few[left][at] = numbers.computeIfAbsent(neighbours[left][at], fresh -> numbers.size());
      }
    }
    return few;
  }

  /**
   * A largest matching in which an earlier left goes without only where all before it, together,
   * leave nothing for it. Lefts that can be matched at once form a matroid, so taking them in turn
   * is best (J. Edmonds, D. R. Fulkerson 1965; from memory).
   */
  static Matching inOrder(int[][] neighbours, int rights) {
    Matching matching = new Matching(neighbours, rights);
    for (int left = 0; left < neighbours.length; left++) {
      matching.layOutFrom(IntStream.of(left));
      matching.augment(left);
    }
    return matching;
  }

  boolean isMatched(int left) {
    return rightOf[left] != NONE;
  }

  int size() {
    return (int) IntStream.of(rightOf).filter(right -> right != NONE).count();
  }

  /** The lefts that an alternating path reaches from an unmatched left, those included. */
  BitSet reachableLefts() {
    layOut();
    return bits(IntStream.range(0, layer.length).filter(left -> layer[left] != NONE));
  }

  /** The rights next to a reachable left. */
  BitSet reachableRights() {
    return bits(reachableLefts().stream().flatMap(left -> IntStream.of(neighbours[left])));
  }

  private IntStream free() {
    return IntStream.range(0, rightOf.length).filter(left -> rightOf[left] == NONE);
  }

  private boolean layOut() {
    return layOutFrom(free());
  }

  /** Numbers the lefts by their distance and answers whether an unmatched right was met. */
  private boolean layOutFrom(IntStream sources) {
    Arrays.fill(layer, NONE);
    Deque<Integer> open = new ArrayDeque<>();
    sources.forEach(
        left -> {
          layer[left] = 0;
          open.add(left);
        });
    boolean met = false;
    while (!open.isEmpty()) {
      int left = open.remove();
      for (int right : neighbours[left]) {
        int next = leftOf[right];
        met |= next == NONE;
        if (next != NONE && layer[next] == NONE) {
          layer[next] = layer[left] + 1;
          open.add(next);
        }
      }
    }
    return met;
  }

  private boolean augment(int left) {
    int depth = layer[left];
    layer[left] = NONE;
    for (int right : neighbours[left]) {
      int next = leftOf[right];
      if (next == NONE || (layer[next] == depth + 1 && augment(next))) {
        leftOf[right] = left;
        rightOf[left] = right;
        return true;
      }
    }
    return false;
  }

  private static BitSet bits(IntStream places) {
    return places.collect(BitSet::new, BitSet::set, BitSet::or);
  }
}
