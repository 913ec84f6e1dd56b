package vestiary.allocation;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Of needs that all clash and are too many for their pieces, those that bear the shortage: each of
 * them could be the one to go without. The others are served whatever happens and prove nothing.
 *
 * <p>Source: A. L. Dulmage, N. S. Mendelsohn, "Coverings of bipartite graphs" (1958; from memory).
 */
final class CriticalPart {

  private CriticalPart() {}

  /** Those of the needs, in the order given; empty if all can be served. */
  static List<Integer> of(int[] needs, Eligibility eligibility) {
    int[][] pieces = IntStream.of(needs).mapToObj(eligibility::piecesOf).toArray(int[][]::new);
    return Matching.largest(pieces).reachableLefts().stream()
        .mapToObj(place -> needs[place])
        .toList();
  }
}
