package vestiary.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.jgrapht.Graph;
import org.jgrapht.alg.matching.HopcroftKarpMaximumCardinalityBipartiteMatching;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;
import org.junit.jupiter.api.Test;

/** Second opinion: JGraphT, a general-purpose graph library. */
class MatchingTest {

  @Property(tries = 1000)
  void the_largest_matching_is_as_large_as_the_library_s(
      @ForAll long seed,
      @ForAll @IntRange(min = 1, max = 30) int lefts,
      @ForAll @IntRange(min = 1, max = 30) int rights) {
    int[][] neighbours = randomGraph(new Random(seed), lefts, rights);

    long theirs = bySecondOpinion(neighbours, rights);

    assertEquals(theirs, Matching.largest(neighbours, rights).size());
    assertEquals(theirs, Matching.inOrder(neighbours, rights).size());
  }

  /** D. Kőnig (1931): lefts out of reach and rights in reach cover every edge, one per match. */
  @Property(tries = 1000)
  void the_cover_meets_every_edge_and_is_no_larger_than_the_matching(@ForAll long seed) {
    int[][] neighbours = randomGraph(new Random(seed), 20, 15);
    Matching matching = Matching.largest(neighbours, 15);

    int uncoveredLefts = matching.reachableLefts().cardinality();
    int coveringRights = matching.reachableRights().cardinality();

    assertEquals(matching.size(), 20 - uncoveredLefts + coveringRights);
    matching.reachableLefts().stream()
        .flatMap(left -> IntStream.of(neighbours[left]))
        .forEach(right -> assertTrue(matching.reachableRights().get(right)));
  }

  @Test
  void the_first_in_order_keep_their_place() {
    int[][] neighbours = {{0}, {0, 1}, {0, 1}, {1}};

    Matching matching = Matching.inOrder(neighbours, 2);

    assertTrue(matching.isMatched(0) && matching.isMatched(1));
    assertEquals(2, matching.size());
  }

  private static long bySecondOpinion(int[][] neighbours, int rights) {
    Graph<String, DefaultEdge> graph = new SimpleGraph<>(DefaultEdge.class);
    Set<String> left = new HashSet<>();
    Set<String> right = new HashSet<>();
    IntStream.range(0, neighbours.length).forEach(n -> left.add("left " + n));
    IntStream.range(0, rights).forEach(n -> right.add("right " + n));
    left.forEach(graph::addVertex);
    right.forEach(graph::addVertex);
    for (int n = 0; n < neighbours.length; n++) {
      for (int other : neighbours[n]) {
        graph.addEdge("left " + n, "right " + other);
      }
    }
    return new HopcroftKarpMaximumCardinalityBipartiteMatching<>(graph, left, right)
        .getMatching()
        .getEdges()
        .size();
  }

  private static int[][] randomGraph(Random random, int lefts, int rights) {
    int oneIn = 1 + random.nextInt(8);
    return IntStream.range(0, lefts)
        .mapToObj(
            left ->
                IntStream.range(0, rights).filter(right -> random.nextInt(oneIn) == 0).toArray())
        .toArray(int[][]::new);
  }
}
