package vestiary.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.allocation.Minutes.A;
import static vestiary.allocation.Minutes.B;
import static vestiary.allocation.Minutes.C;
import static vestiary.allocation.Minutes.NO_TURN;
import static vestiary.allocation.Minutes.away;
import static vestiary.allocation.Minutes.bothWays;
import static vestiary.allocation.Minutes.need;
import static vestiary.allocation.Minutes.nowhere;
import static vestiary.allocation.Minutes.ofCluster;
import static vestiary.allocation.Minutes.piece;
import static vestiary.allocation.Minutes.roads;
import static vestiary.calendar.Colour.GREEN;
import static vestiary.calendar.Colour.RED;
import static vestiary.calendar.Colour.ROSE;
import static vestiary.calendar.Colour.VIOLET;
import static vestiary.calendar.Colour.WHITE;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/** Small cases from the literature on intervals, orders and matchings, worked by hand. */
class WorkedCasesTest {

  /** J. Kleinberg, É. Tardos, "Algorithm Design" (2005), chapter 4: rooms needed = depth. */
  @Test
  void in_one_church_the_pieces_wanted_are_those_wanted_at_one_moment() {
    List<Need> needs =
        List.of(
            need(1, A, 0, 3, WHITE),
            need(2, A, 0, 3, WHITE),
            need(3, A, 0, 7, WHITE),
            need(4, A, 4, 7, WHITE),
            need(5, A, 4, 10, WHITE),
            need(6, A, 8, 11, WHITE),
            need(7, A, 8, 11, WHITE));

    List<Shortage> withThree = check(needs, whites(3), nowhere());
    List<Shortage> withTwo = check(needs, whites(2), nowhere());

    assertEquals(List.of(), withThree);
    Set<Need> named = new HashSet<>();
    withTwo.forEach(shortage -> named.addAll(shortage.needs()));
    assertEquals(Set.copyOf(needs), named);
    assertTrue(withTwo.stream().allMatch(s -> s.needed() == 3 && s.missing() == 1));
  }

  /** R. P. Dilworth (1950): the fewest chains are the largest set without comparable elements. */
  @Test
  void masses_that_do_not_overlap_clash_if_the_journey_is_too_long() {
    List<Need> needs = List.of(need(1, A, 0, 60, WHITE), need(2, B, 80, 140, WHITE));

    List<Shortage> found = check(needs, whites(1), bothWays(30, A, B));

    assertEquals(1, found.size());
    assertEquals(ShortageKind.UNREACHABLE, found.get(0).kind());
    assertEquals(Minutes.minute(90), found.get(0).late().get(0).arrives());
  }

  @Test
  void arriving_at_the_very_minute_is_enough() {
    List<Need> needs = List.of(need(1, A, 0, 60, WHITE), need(2, B, 90, 150, WHITE));

    assertEquals(List.of(), check(needs, whites(1), bothWays(30, A, B)));
  }

  /** P. Hall, "On representatives of subsets" (1935): a set with too few neighbours. */
  @Test
  void the_finding_names_those_with_too_few_pieces_and_nobody_else() {
    List<Need> three =
        List.of(need(1, A, 0, 9, WHITE), need(2, A, 0, 9, WHITE), need(3, A, 0, 9, WHITE));
    List<Need> needs = new ArrayList<>(three);
    needs.add(need(4, A, 0, 9, RED));
    List<Piece> pieces =
        List.of(piece("p", A, WHITE), piece("q", A, WHITE, RED), piece("r", A, RED));

    List<Shortage> found = check(needs, pieces, nowhere());

    assertEquals(1, found.size());
    assertEquals(three, found.get(0).needs());
    assertEquals(List.of("p", "q"), WenlowValley.codes(found.get(0).pieces()));
  }

  /** D. Kőnig (1931): a largest matching is as large as the smallest cover. */
  @Test
  void two_that_one_piece_alone_serves_are_named_without_the_third_who_has_others() {
    List<Need> two = List.of(need(1, A, 0, 9, RED), need(2, A, 0, 9, RED));
    List<Need> needs = new ArrayList<>(two);
    needs.add(need(3, A, 0, 9, WHITE));
    List<Piece> pieces =
        List.of(piece("p", A, WHITE, RED), piece("q", A, WHITE), piece("r", A, WHITE));

    List<Shortage> found = check(needs, pieces, nowhere());

    assertEquals(1, found.size());
    assertEquals(two, found.get(0).needs());
  }

  /**
   * A path through the order takes one from each set of clashing elements (R. P. Dilworth 1950).
   */
  @Test
  void what_no_clashing_set_proves_is_proved_by_the_longest_chains() {
    List<Need> needs =
        List.of(need(1, A, 1, 5, RED), need(2, A, 3, 6, WHITE), need(3, A, 5, 6, GREEN));
    List<Piece> pieces = List.of(piece("p", A, WHITE, GREEN), piece("q", A, WHITE, RED));

    Shortage found = only(check(needs, pieces, nowhere()));

    Certificate.Chains chains = (Certificate.Chains) found.certificate();
    assertEquals(needs, found.needs());
    assertEquals(List.of(1, 1), chains.chains().stream().map(c -> c.needs().size()).toList());
    assertEquals(1, found.missing());
    assertEquals(Severity.MUST, found.severity());
  }

  /** Unit propagation: M. Davis, G. Logemann, D. Loveland (1962; from memory). */
  @Test
  void what_chains_do_not_prove_is_proved_by_one_forced_choice_after_another() {
    Need first = need(1, A, 3, 5, RED);
    Need whole = need(2, A, 3, 7, WHITE);
    Need second = need(3, A, 4, 6, GREEN);
    Need last = need(4, A, 5, 8, VIOLET);
    List<Piece> pieces =
        List.of(
            piece("p", A, GREEN, VIOLET),
            piece("q", A, WHITE, RED, VIOLET),
            piece("r", A, RED, GREEN));

    Shortage found = only(check(List.of(first, whole, second, last), pieces, nowhere()));

    Certificate.ForcedChoices forced = (Certificate.ForcedChoices) found.certificate();
    assertEquals(
        List.of("q to 2", "r to 1", "p to 3"),
        forced.choices().stream().map(WorkedCasesTest::told).toList());
    assertEquals(last, forced.without());
    assertEquals(1, found.missing());
  }

  /** Found by trying small cases at random; worked again by hand. */
  @Test
  void what_no_choice_forces_is_proved_by_trying_all_ways() {
    List<Need> needs =
        List.of(
            need(1, A, 2, 5, WHITE),
            need(2, A, 1, 3, RED),
            need(3, A, 4, 6, GREEN),
            need(4, A, 2, 5, VIOLET),
            need(5, A, 3, 4, ROSE));
    List<Piece> pieces =
        List.of(
            piece("p", A, WHITE, GREEN, VIOLET, ROSE),
            piece("q", A, WHITE, RED, ROSE),
            piece("r", A, WHITE, RED, GREEN, VIOLET));

    Shortage found = only(check(needs, pieces, nowhere()));

    assertEquals(CertificateKind.EXHAUSTION, found.certificate().kind());
    assertEquals(Set.copyOf(needs), Set.copyOf(found.needs()));
    assertEquals(1, found.missing());
  }

  /** L. Mirsky, "A dual of Dilworth's decomposition theorem" (1971). */
  @Test
  void the_longest_chain_is_as_long_as_the_fewest_groups_that_clash() {
    List<Need> needs = greedyFails();
    Succession order = new Succession(needs, bothWays(2, A, B), NO_TURN.turn());

    List<Integer> chain = LongestChain.of(List.of(0, 1, 2, 3, 4, 5), order);
    List<List<Integer>> groups = List.of(List.of(0), List.of(1, 2), List.of(3), List.of(4, 5));

    assertEquals(List.of(0, 2, 3, 5), chain);
    assertEquals(groups.size(), chain.size());
    assertTrue(order.clash(1, 2) && order.clash(4, 5));
  }

  /** C. Greene (1976): two chains cover the six, though a longest chain first leaves some over. */
  @Test
  void two_pieces_serve_six_masses_that_a_greedy_hand_would_not_get_through() {
    List<Need> needs = greedyFails();

    assertEquals(List.of(), check(needs, whites(2), bothWays(2, A, B)));
    assertEquals(
        Set.copyOf(needs),
        check(needs, whites(1), bothWays(2, A, B)).stream()
            .flatMap(s -> s.needs().stream())
            .collect(Collectors.toSet()));
  }

  /** Journeys closed under shortest ways (R. W. Floyd 1962) make the order transitive. */
  @Test
  void a_way_round_that_is_quicker_than_the_direct_one_is_taken() {
    List<Journey> roads = new ArrayList<>(roads(10, A, B));
    roads.addAll(roads(10, B, C));
    roads.addAll(roads(100, A, C));
    List<Need> needs =
        List.of(need(1, A, 0, 10, WHITE), need(2, B, 20, 30, WHITE), need(3, C, 40, 50, WHITE));

    List<Shortage> all = check(needs, whites(1), Journeys.of(roads));
    List<Shortage> endsOnly =
        check(List.of(needs.get(0), needs.get(2)), whites(1), Journeys.of(roads));

    assertEquals(List.of(), all);
    assertEquals(List.of(), endsOnly);
  }

  @Test
  void a_piece_held_elsewhere_does_not_count_for_the_masses_it_misses() {
    List<Need> needs =
        List.of(need(1, A, 0, 10, WHITE), need(2, A, 20, 30, WHITE), need(3, A, 20, 30, WHITE));
    List<Piece> pieces = List.of(piece("p", A, WHITE), away(piece("q", A, WHITE), 15, 25));

    List<Shortage> found = check(needs, pieces, nowhere());

    assertEquals(1, found.size());
    assertEquals(needs.subList(1, 3), found.get(0).needs());
    assertEquals(List.of("p"), WenlowValley.codes(found.get(0).pieces()));
  }

  @Test
  void a_journey_nobody_knows_cannot_be_made() {
    List<Need> needs = List.of(need(1, A, 0, 60, WHITE), need(2, B, 600, 660, WHITE));
    Journeys outOnly = Journeys.of(roads(10, A, C));

    List<Shortage> found = check(needs, whites(2), outOnly);

    assertEquals(1, found.size());
    assertEquals(needs.subList(1, 2), found.get(0).needs());
    assertEquals(0, found.get(0).available());
    assertEquals(Hindrance.NO_JOURNEY, found.get(0).notServing().get(0).hindrance());
  }

  private static List<Need> greedyFails() {
    return List.of(
        need(1, A, 1, 2, WHITE),
        need(2, B, 3, 6, WHITE),
        need(3, B, 4, 5, WHITE),
        need(4, B, 6, 7, WHITE),
        need(5, A, 7, 10, WHITE),
        need(6, B, 7, 10, WHITE));
  }

  private static Shortage only(List<Shortage> found) {
    assertEquals(1, found.size());
    return found.get(0);
  }

  private static String told(Certificate.Choice choice) {
    String pieces = String.join(", ", WenlowValley.codes(choice.pieces()));
    return pieces + " to " + choice.need().mass().value().getLeastSignificantBits();
  }

  private static List<Piece> whites(int number) {
    return IntStream.rangeClosed(1, number).mapToObj(n -> piece("w" + n, A, WHITE)).toList();
  }

  private static List<Shortage> check(List<Need> needs, List<Piece> pieces, Journeys journeys) {
    Span span = new Span(needs, pieces, journeys, NO_TURN);
    List<Shortage> found = ofCluster(span);
    found.forEach(s -> assertEquals(List.of(), ShortageProof.findObjections(s, span)));
    return found;
  }
}
