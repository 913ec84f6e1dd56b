package vestiary.allocation;

import java.util.BitSet;
import java.util.stream.IntStream;

/**
 * The most needs no two of which can share a piece.
 *
 * <p>As many as the fewest chains that hold all needs, which is their number less the largest
 * matching of needs to later needs; the vertices left out by the smallest cover are the set.
 * Source: R. P. Dilworth 1950; D. R. Fulkerson, "Note on Dilworth's decomposition theorem" (1956);
 * D. Kőnig 1931 for the cover.
 */
final class LargestClashingSet {

  private LargestClashingSet() {}

  /** One largest set out of the given needs, in the order given; the same one every time. */
  static int[] of(int[] needs, Succession succession) {
    Matching matching = matching(needs, succession);
    BitSet earlier = matching.reachableLefts();
    BitSet later = matching.reachableRights();
    return IntStream.range(0, needs.length)
        .filter(place -> earlier.get(place) && !later.get(place))
        .map(place -> needs[place])
        .toArray();
  }

  private static Matching matching(int[] needs, Succession succession) {
    int[][] followers = new int[needs.length][];
    for (int place = 0; place < needs.length; place++) {
      int one = needs[place];
      followers[place] =
          IntStream.range(0, needs.length)
              .filter(other -> succession.precedes(one, needs[other]))
              .toArray();
    }
    return Matching.largest(followers, needs.length);
  }
}
