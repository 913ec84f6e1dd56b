package vestiary.allocation.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.jgrapht.Graph;
import org.jgrapht.alg.flow.mincost.CapacityScalingMinimumCostFlow;
import org.jgrapht.alg.flow.mincost.MinimumCostFlowProblem;
import org.jgrapht.alg.matching.HopcroftKarpMaximumCardinalityBipartiteMatching;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;
import org.jgrapht.graph.SimpleGraph;
import vestiary.allocation.Journey;
import vestiary.allocation.Journeys;
import vestiary.allocation.Minutes;
import vestiary.allocation.Span;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.Score;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.solver.Solvers;
import vestiary.calendar.Colour;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/** Second opinion: JGraphT, a general-purpose graph library, and theorems on orders. */
class SecondOpinionTest {

  private static final int CHURCHES = 4;

  private final Planner planner = new Planner(Solvers.best());

  /**
   * R. P. Dilworth, "A decomposition theorem for partially ordered sets" (1950): like needs are met
   * by as many pieces as the largest set of them of which no two can share one, and by no fewer; by
   * D. R. Fulkerson (1956) that is their number less the largest matching.
   */
  @Property(tries = 150)
  void like_needs_want_as_many_pieces_as_the_most_that_clash(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 14) int masses) {
    Random random = new Random(seed);
    Journeys journeys = journeys(random);
    List<Need> needs = needs(masses, random);
    int width = masses - matching(needs, journeys);

    assertEquals(0, unmet(needs, width, journeys));
    assertEquals(1, Math.min(1, unmet(needs, width - 1, journeys)));
  }

  /** P. Hall, "On representatives of subsets" (1935), by the largest matching at one moment. */
  @Property(tries = 150)
  void at_one_moment_as_many_are_served_as_the_largest_matching(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 8) int size) {
    Random random = new Random(seed);
    List<Colour> colours = List.of(Colour.WHITE, Colour.RED, Colour.GREEN, Colour.VIOLET);
    List<Need> needs =
        IntStream.range(0, size)
            .mapToObj(n -> Minutes.need(n, Minutes.A, 0, 60, colours.get(random.nextInt(4))))
            .toList();
    List<Piece> pieces = new ArrayList<>();
    for (int number = 0; number < size; number++) {
      List<Colour> own = new ArrayList<>(colours);
      Collections.shuffle(own, random);
      Colour[] served = own.subList(0, 1 + random.nextInt(3)).toArray(Colour[]::new);
      pieces.add(Minutes.piece("p" + number, Minutes.A, served));
    }

    Score score =
        planner.coverage(Situation.of(new Span(needs, pieces, Minutes.nowhere(), Minutes.NO_TURN)));

    assertEquals(size - eligibilityMatching(needs, pieces), score.unmet().get(0));
  }

  /** One colour, pieces carried one by one: a flow of least cost between all pairs of Masses. */
  @Property(tries = 100)
  void journeys_of_like_pieces_are_the_flow_of_least_cost(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 10) int masses) {
    Random random = new Random(seed);
    Journeys journeys = journeys(random);
    List<Need> needs = needs(masses, random);
    int stock = 1 + random.nextInt(4);
    List<Piece> pieces =
        IntStream.range(0, stock)
            .mapToObj(n -> Minutes.piece("p" + n, church(random.nextInt(CHURCHES)), Colour.WHITE))
            .toList();
    Span span = new Span(needs, pieces, journeys, Minutes.NO_TURN);

    Plan plan = planner.plan(Situation.of(span), Effort.byPieces());

    Score score = plan.score();
    assertEquals(score, plan.bounds());
    assertEquals(
        leastCost(needs, pieces, journeys),
        1_000_000 * score.unmet().get(0) + 1_000 * score.carriages() + score.minutes());
  }

  private long leastCost(List<Need> needs, List<Piece> pieces, Journeys journeys) {
    Graph<String, DefaultWeightedEdge> graph =
        new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);
    Map<String, Integer> supplies = new HashMap<>();
    List.of("all", "end").forEach(graph::addVertex);
    supplies.put("all", pieces.size());
    supplies.put("end", -pieces.size());
    arc(graph, "all", "end", 0);
    for (int n = 0; n < needs.size(); n++) {
      graph.addVertex("begin" + n);
      graph.addVertex("done" + n);
      arc(graph, "begin" + n, "done" + n, -1_000_000);
      arc(graph, "done" + n, "end", 0);
    }
    for (int p = 0; p < pieces.size(); p++) {
      graph.addVertex("piece" + p);
      arc(graph, "all", "piece" + p, 0);
      for (int n = 0; n < needs.size(); n++) {
        arc(graph, "piece" + p, "begin" + n, cost(pieces.get(p).home(), needs.get(n), journeys));
      }
    }
    for (int n = 0; n < needs.size(); n++) {
      for (int m = 0; m < needs.size(); m++) {
        if (n != m && precedes(needs.get(n), needs.get(m), journeys)) {
          arc(graph, "done" + n, "begin" + m, cost(needs.get(n).church(), needs.get(m), journeys));
        }
      }
    }
    MinimumCostFlowProblem<String, DefaultWeightedEdge> problem =
        new MinimumCostFlowProblem.MinimumCostFlowProblemImpl<>(
            graph,
            vertex -> supplies.getOrDefault(vertex, 0),
            edge -> edgeMost(graph, edge, pieces.size()),
            edge -> 0);
    double cost =
        new CapacityScalingMinimumCostFlow<String, DefaultWeightedEdge>()
            .getMinimumCostFlow(problem)
            .getCost();
    return Math.round(cost) + 1_000_000L * needs.size();
  }

  private static int edgeMost(
      Graph<String, DefaultWeightedEdge> graph, DefaultWeightedEdge edge, int all) {
    return graph.getEdgeSource(edge).equals("all") && graph.getEdgeTarget(edge).equals("end")
        ? all
        : 1;
  }

  private static long cost(ChurchId from, Need to, Journeys journeys) {
    return from.equals(to.church())
        ? 0
        : 1_000 + journeys.find(from, to.church()).orElseThrow().toMinutes();
  }

  private static DefaultWeightedEdge arc(
      Graph<String, DefaultWeightedEdge> graph, String from, String to, double cost) {
    DefaultWeightedEdge edge = graph.addEdge(from, to);
    graph.setEdgeWeight(edge, cost);
    return edge;
  }

  private long unmet(List<Need> needs, int stock, Journeys journeys) {
    List<Piece> pieces =
        IntStream.range(0, stock)
            .mapToObj(n -> Minutes.piece("p" + n, church(n % CHURCHES), Colour.WHITE))
            .toList();
    return planner
        .coverage(Situation.of(new Span(needs, pieces, journeys, Minutes.NO_TURN)))
        .unmet()
        .get(0);
  }

  private static int matching(List<Need> needs, Journeys journeys) {
    return matching(
        needs.size(),
        needs.size(),
        (one, other) -> one != other && precedes(needs.get(one), needs.get(other), journeys));
  }

  private static int eligibilityMatching(List<Need> needs, List<Piece> pieces) {
    return matching(
        needs.size(),
        pieces.size(),
        (need, piece) -> needs.get(need).isServedBy(pieces.get(piece).colours()));
  }

  private interface Pairing {
    boolean holds(int left, int right);
  }

  private static int matching(int lefts, int rights, Pairing pairing) {
    Graph<String, DefaultEdge> graph = new SimpleGraph<>(DefaultEdge.class);
    Set<String> left = new HashSet<>();
    Set<String> right = new HashSet<>();
    IntStream.range(0, lefts).forEach(n -> left.add("left" + n));
    IntStream.range(0, rights).forEach(n -> right.add("right" + n));
    left.forEach(graph::addVertex);
    right.forEach(graph::addVertex);
    for (int one = 0; one < lefts; one++) {
      for (int other = 0; other < rights; other++) {
        if (pairing.holds(one, other)) {
          graph.addEdge("left" + one, "right" + other);
        }
      }
    }
    return new HopcroftKarpMaximumCardinalityBipartiteMatching<>(graph, left, right)
        .getMatching()
        .getEdges()
        .size();
  }

  private static boolean precedes(Need one, Need other, Journeys journeys) {
    return !one.window()
        .cleared()
        .plus(journeys.find(one.church(), other.church()).orElseThrow())
        .isAfter(other.window().setOut());
  }

  private static List<Need> needs(int masses, Random random) {
    return IntStream.range(0, masses)
        .mapToObj(
            number -> {
              int from = 200 + random.nextInt(400);
              int until = from + 20 + random.nextInt(60);
              return Minutes.need(
                  number, church(random.nextInt(CHURCHES)), from, until, Colour.WHITE);
            })
        .toList();
  }

  private static Journeys journeys(Random random) {
    List<Journey> roads = new ArrayList<>();
    for (int one = 0; one < CHURCHES; one++) {
      for (int other = 0; other < one; other++) {
        roads.addAll(Minutes.roads(5 + random.nextInt(60), church(one), church(other)));
      }
    }
    return Journeys.of(roads);
  }

  private static ChurchId church(int number) {
    return new ChurchId(new UUID(5, number));
  }
}
