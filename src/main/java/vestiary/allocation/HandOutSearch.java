package vestiary.allocation;

import java.nio.IntBuffer;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Hands pieces out need by need in order of time, and takes back what leads nowhere. How far all
 * pieces were when that was found is kept, so that no such state is tried twice; of pieces that
 * serve the same needs and are as far as one another one is tried.
 */
final class HandOutSearch {

  private static final int FREE = -1;

  /** Beyond that many needs the steps would not suffice, nor would the stack. */
  private static final int MOST_NEEDS = 500;

  private final Succession succession;
  private final int[] needs;
  private final int[][] candidates;
  private final int[] kinds;
  private final int[] lastClash;
  private final int[] last;
  private final Set<IntBuffer> leadNowhere = new HashSet<>();
  private final long mostSteps;
  private long steps;

  /**
   * @param needs in an order in which what precedes stands before what follows
   */
  HandOutSearch(int[] needs, Succession succession, Eligibility eligibility, long mostSteps) {
    this.succession = succession;
    this.needs = needs;
    this.mostSteps = mostSteps;
    Map<Integer, BitSet> served = new HashMap<>();
    for (int place = 0; place < needs.length; place++) {
      for (int piece : eligibility.piecesOf(needs[place])) {
        served.computeIfAbsent(piece, unknown -> new BitSet()).set(place);
      }
    }
    List<Integer> order = order(served);
    this.kinds = kinds(order, served);
    this.candidates = candidates(order, served);
    this.last = new int[order.size()];
    Arrays.fill(last, FREE);
    this.lastClash = IntStream.range(0, needs.length).map(this::lastClash).toArray();
  }

  HandOut.Outcome run() {
    if (needs.length > MOST_NEEDS || mostSteps <= 0) {
      return HandOut.Outcome.GIVEN_UP;
    }
    boolean served = serveFrom(0);
    if (served) {
      return HandOut.Outcome.ALL_SERVED;
    }
    return steps >= mostSteps ? HandOut.Outcome.GIVEN_UP : HandOut.Outcome.ONE_WITHOUT;
  }

  long steps() {
    return steps;
  }

  /** Those that serve fewest first; pieces that serve the same needs stand together. */
  private static List<Integer> order(Map<Integer, BitSet> served) {
    Map<BitSet, Integer> first = new HashMap<>();
    served.forEach((piece, own) -> first.merge(own, piece, Math::min));
    return served.keySet().stream()
        .sorted(
            Comparator.comparing((Integer piece) -> served.get(piece).cardinality())
                .thenComparing(piece -> first.get(served.get(piece)))
                .thenComparing(piece -> piece))
        .toList();
  }

  /** For each piece the place of the first that serves the same needs. */
  private static int[] kinds(List<Integer> order, Map<Integer, BitSet> served) {
    int[] kinds = new int[order.size()];
    for (int at = 1; at < kinds.length; at++) {
      boolean same = served.get(order.get(at)).equals(served.get(order.get(at - 1)));
      kinds[at] = same ? kinds[at - 1] : at;
    }
    return kinds;
  }

  private int[][] candidates(List<Integer> order, Map<Integer, BitSet> served) {
    return IntStream.range(0, needs.length)
        .mapToObj(
            place ->
                IntStream.range(0, order.size())
                    .filter(at -> served.get(order.get(at)).get(place))
                    .toArray())
        .toArray(int[][]::new);
  }

  /** The last place whose need cannot have the piece that this one has. */
  private int lastClash(int place) {
    int later = needs.length - 1;
    while (later > place && succession.precedes(needs[place], needs[later])) {
      later--;
    }
    return later;
  }

  private boolean serveFrom(int place) {
    if (place == needs.length) {
      return true;
    }
    steps += last.length;
    IntBuffer state = state(place);
    if (leadNowhere.contains(state)) {
      return false;
    }
    Set<Long> tried = new HashSet<>();
    for (int piece : candidates[place]) {
      int before = last[piece];
      if (++steps >= mostSteps) {
        return false;
      }
      boolean free = before == FREE || succession.precedes(needs[before], needs[place]);
      if (free && tried.add((long) kinds[piece] * needs.length + relevant(before, place) + 1)) {
        last[piece] = place;
        if (serveFrom(place + 1)) {
          return true;
        }
        last[piece] = before;
      }
    }
    if (steps < mostSteps) {
      leadNowhere.add(state);
    }
    return false;
  }

  private int relevant(int before, int place) {
    return before == FREE || lastClash[before] < place ? FREE : before;
  }

  /** How far the pieces are, as far as it matters from here on; the same for like pieces. */
  private IntBuffer state(int place) {
    int[] state = new int[last.length + 1];
    for (int piece = 0; piece < last.length; piece++) {
      state[piece] = relevant(last[piece], place);
    }
    for (int from = 0, to = 0; from < last.length; from = to) {
      while (to < last.length && kinds[to] == from) {
        to++;
      }
      Arrays.sort(state, from, to);
    }
    state[last.length] = place;
    return IntBuffer.wrap(state);
  }
}
