package vestiary.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.jgrapht.Graph;
import org.jgrapht.alg.matching.HopcroftKarpMaximumCardinalityBipartiteMatching;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;
import vestiary.calendar.Colour;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/** Theorems on orders and matchings; second opinion: JGraphT, a general-purpose graph library. */
class TheoremsTest {

  private static final List<Colour> COLOURS =
      List.of(Colour.WHITE, Colour.RED, Colour.GREEN, Colour.VIOLET, Colour.ROSE, Colour.BLACK);

  /**
   * R. P. Dilworth (1950): the most needs that clash are the fewest pieces; D. R. Fulkerson (1956):
   * their number less the largest matching.
   */
  @Property(tries = 500)
  void like_needs_fall_short_with_one_piece_fewer_than_the_most_that_clash(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 25) int masses) {
    Random random = new Random(seed);
    List<Need> needs = likeNeeds(masses, random);
    Journeys journeys = roads(random);
    Succession order = new Succession(needs, journeys, Minutes.withTurn(5).turn());

    int width = masses - matching(masses, masses, order::precedes);

    assertEquals(width, LargestClashingSet.of(IntStream.range(0, masses).toArray(), order).length);
    assertEquals(List.of(), found(needs, width, journeys));
    assertTrue(
        found(needs, width - 1, journeys).stream()
            .anyMatch(one -> one.allClash() && one.needed() == width));
  }

  /** L. Mirsky (1971): the longest chain is as long as the fewest groups of clashing needs. */
  @Property(tries = 500)
  void one_piece_serves_at_most_as_many_as_there_are_groups_that_clash(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 25) int masses) {
    Random random = new Random(seed);
    List<Need> needs = likeNeeds(masses, random);
    Succession order = new Succession(needs, roads(random), Minutes.withTurn(5).turn());

    List<List<Integer>> groups = ChainsAndGroups.groups(order, masses);

    List<Integer> all = IntStream.range(0, masses).boxed().toList();
    List<Integer> chain = LongestChain.of(all, order);
    assertEquals(groups.size(), chain.size());
    groups.forEach(
        group ->
            group.forEach(
                one ->
                    group.forEach(
                        other -> assertTrue(one.equals(other) || order.clash(one, other)))));
    for (int at = 1; at < chain.size(); at++) {
      assertTrue(order.precedes(chain.get(at - 1), chain.get(at)));
    }
  }

  /** P. Hall (1935) and D. Kőnig (1931): at one moment nothing but counting is needed. */
  @Property(tries = 500)
  void at_one_moment_a_finding_is_there_if_the_largest_matching_leaves_one_over(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 9) int size) {
    Random random = new Random(seed);
    List<Need> needs =
        IntStream.range(0, size)
            .mapToObj(n -> Minutes.need(n, Minutes.A, 0, 60, anyOf(random, 1)[0]))
            .toList();
    List<Piece> pieces =
        IntStream.range(0, size + random.nextInt(3))
            .mapToObj(n -> Minutes.piece("p" + n, Minutes.A, anyOf(random, 3)))
            .toList();
    Span span = new Span(needs, pieces, Minutes.nowhere(), Minutes.NO_TURN);

    int served =
        matching(
            size,
            pieces.size(),
            (need, piece) -> needs.get(need).isServedBy(pieces.get(piece).colours()));

    List<Shortage> found = Minutes.ofCluster(span);
    assertEquals(served == size, found.isEmpty());
    assertTrue(found.stream().allMatch(Shortage::allClash));
    Set<Need> without = new HashSet<>();
    found.forEach(shortage -> without.addAll(shortage.unserved()));
    assertEquals(size - served, without.size());
  }

  private static List<Need> likeNeeds(int masses, Random random) {
    return IntStream.range(0, masses)
        .mapToObj(mass -> RandomCase.randomNeed(mass, 3, List.of(Colour.WHITE), random))
        .toList();
  }

  private static Journeys roads(Random random) {
    List<Journey> roads = new ArrayList<>();
    for (int one = 1; one <= 3; one++) {
      for (int other = 1; other < one; other++) {
        roads.addAll(Minutes.roads(random.nextInt(60), Minutes.church(one), Minutes.church(other)));
      }
    }
    return Journeys.of(roads);
  }

  private static List<Shortage> found(List<Need> needs, int pieces, Journeys journeys) {
    List<Piece> like =
        IntStream.range(0, pieces)
            .mapToObj(n -> Minutes.piece("w" + n, Minutes.A, Colour.WHITE))
            .toList();
    return Minutes.ofCluster(new Span(needs, like, journeys, Minutes.withTurn(5)));
  }

  private static Colour[] anyOf(Random random, int most) {
    List<Colour> colours = new ArrayList<>(COLOURS);
    Collections.shuffle(colours, random);
    return colours.subList(0, 1 + random.nextInt(most)).toArray(Colour[]::new);
  }

  private static int matching(int lefts, int rights, BiPredicate<Integer, Integer> edge) {
    Graph<Integer, DefaultEdge> graph = new SimpleGraph<>(DefaultEdge.class);
    Set<Integer> left = new HashSet<>(IntStream.range(0, lefts).boxed().toList());
    Set<Integer> right = new HashSet<>(IntStream.range(lefts, lefts + rights).boxed().toList());
    left.forEach(graph::addVertex);
    right.forEach(graph::addVertex);
    for (int one : left) {
      for (int other : right) {
        if (edge.test(one, other - lefts)) {
          graph.addEdge(one, other);
        }
      }
    }
    return new HopcroftKarpMaximumCardinalityBipartiteMatching<>(graph, left, right)
        .getMatching()
        .getEdges()
        .size();
  }
}
