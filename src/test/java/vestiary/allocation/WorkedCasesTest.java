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

  /** One need goes without, but no set of clashing needs shows it: nothing is claimed. */
  @Test
  void what_no_clashing_set_proves_is_not_claimed() {
    List<Need> needs =
        List.of(need(1, A, 1, 5, RED), need(2, A, 3, 6, WHITE), need(3, A, 5, 6, GREEN));
    List<Piece> pieces = List.of(piece("p", A, WHITE, GREEN), piece("q", A, WHITE, RED));

    assertEquals(List.of(), check(needs, pieces, nowhere()));
  }

  /** C. Greene (1976): two chains cover the six, though a longest chain first leaves some over. */
  @Test
  void two_pieces_serve_six_masses_that_a_greedy_hand_would_not_get_through() {
    List<Need> needs =
        List.of(
            need(1, A, 1, 2, WHITE),
            need(2, B, 3, 6, WHITE),
            need(3, B, 4, 5, WHITE),
            need(4, B, 6, 7, WHITE),
            need(5, A, 7, 10, WHITE),
            need(6, B, 7, 10, WHITE));

    assertEquals(List.of(), check(needs, whites(2), bothWays(2, A, B)));
    assertEquals(
        Set.copyOf(needs),
        check(needs, whites(1), bothWays(2, A, B)).stream()
            .flatMap(s -> s.needs().stream())
            .collect(Collectors.toSet()));
  }

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
