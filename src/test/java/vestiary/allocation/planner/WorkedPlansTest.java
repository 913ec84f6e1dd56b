package vestiary.allocation.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.allocation.Minutes.A;
import static vestiary.allocation.Minutes.B;
import static vestiary.allocation.Minutes.C;
import static vestiary.allocation.Minutes.bothWays;
import static vestiary.allocation.Minutes.nowhere;
import static vestiary.allocation.Minutes.piece;
import static vestiary.allocation.Minutes.roads;
import static vestiary.allocation.WenlowValley.HT;
import static vestiary.allocation.WenlowValley.OL;
import static vestiary.allocation.WenlowValley.PP;
import static vestiary.allocation.WenlowValley.SA;
import static vestiary.allocation.WenlowValley.SJ;
import static vestiary.allocation.WenlowValley.SM;
import static vestiary.allocation.WenlowValley.at;
import static vestiary.calendar.Colour.GREEN;
import static vestiary.calendar.Colour.RED;
import static vestiary.calendar.Colour.ROSE;
import static vestiary.calendar.Colour.VIOLET;
import static vestiary.calendar.Colour.WHITE;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import vestiary.allocation.Journey;
import vestiary.allocation.Journeys;
import vestiary.allocation.Minutes;
import vestiary.allocation.Span;
import vestiary.allocation.WenlowValley;
import vestiary.allocation.plan.Fit;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Movement;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.PlanProof;
import vestiary.allocation.plan.PlanStatus;
import vestiary.allocation.plan.Ride;
import vestiary.allocation.plan.Score;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.plan.Traits;
import vestiary.allocation.solver.Solvers;
import vestiary.calendar.Colour;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Norm;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Step;
import vestiary.vesting.Wearer;
import vestiary.vesting.Window;

/**
 * Small plans with their results, from the literature on intervals and orders where it is named,
 * else worked by hand; the churches and journeys are those of the invented cluster.
 */
class WorkedPlansTest {

  private final List<Need> needs = new ArrayList<>();
  private final List<Piece> pieces = new ArrayList<>();
  private final List<Hold> holds = new ArrayList<>();
  private final List<Ride> rides = new ArrayList<>();
  private final Map<String, Traits> traits = new HashMap<>();
  private final Map<Wearer, Fit> fits = new HashMap<>();
  private Journeys journeys = WenlowValley.journeys();

  /** Worked by hand. */
  @Test
  void one_carriage_brings_the_third_white_set_to_the_jubilee() {
    jubilee();

    assertScore(plan(), List.of(0L, 0L, 0L), List.of(0L, 0L, 0L), 1, 14);
  }

  /** Worked by hand. */
  @Test
  void two_who_are_tall_cost_no_second_carriage() {
    jubilee();
    for (int tall = 1; tall <= 2; tall++) {
      fits.put(needs.get(tall).wearer(), new Fit(130, 150, true));
    }
    pieces.forEach(piece -> traits.put(piece.code(), length(piece.home().equals(HT) ? 132 : 120)));

    assertScore(plan(), List.of(0L, 0L, 0L), List.of(0L, 0L, 0L), 1, 14);
  }

  /** Worked by hand. */
  @Test
  void if_nothing_may_be_carried_one_concelebrant_wears_his_stole_over_the_alb() {
    jubilee();
    List<Piece> staying = pieces.stream().map(WorkedPlansTest::staying).toList();
    pieces.clear();
    pieces.addAll(staying);

    assertScore(plan(), List.of(0L, 0L, 0L), List.of(0L, 0L, 1L), 0, 0);
  }

  /** Worked by hand: one journey for two sets, not two journeys for one each. */
  @Test
  void both_red_sets_come_from_one_church_in_one_carriage() {
    needs(5, HT, "2026-12-05T09:30", "2026-12-05T12:45", RED, Step.STOLE_OVER_ALB);
    stock(RED, 3, 2, 1, 1, 1, 1);

    Plan plan = plan();

    assertScore(plan, List.of(0L, 0L, 0L), List.of(0L, 0L, 0L), 1, 14);
    assertEquals(SA, plan.movements().get(0).from());
  }

  /** Worked by hand. */
  @Test
  void of_two_deacons_one_goes_without_a_dalmatic_if_there_is_one() {
    needs(2, HT, "2026-12-05T09:30", "2026-12-05T12:45", RED, Step.DALMATIC_LEFT_OUT);
    stock(RED, 1, 0, 0, 0, 0, 0);

    assertScore(plan(), List.of(0L, 0L, 0L), List.of(0L, 0L, 1L), 0, 0);
  }

  /** Worked by hand. */
  @Test
  void the_nearest_church_sends_its_white_set_unless_somebody_comes_from_another_anyway() {
    needs(2, SJ, "2026-12-05T10:30", "2026-12-05T12:15", WHITE, Step.STOLE_OVER_ALB);
    stock(WHITE, 3, 2, 1, 0, 1, 0);

    assertScore(plan(), List.of(0L, 0L, 0L), List.of(0L, 0L, 0L), 1, 15);
    assertEquals(PP, plan().movements().get(0).from());

    rides.add(new Ride("Father T", HT, SJ, at("2026-12-05T10:00"), at("2026-12-05T10:18")));
    assertScore(plan(), List.of(0L, 0L, 0L), List.of(0L, 0L, 0L), 0, 0);
    assertEquals("Father T", plan().movements().get(0).carrier());
  }

  /** Worked by hand: from PP the set would be at HT at 10:11, after set-out. */
  @Test
  void one_rose_set_serves_three_of_four_masses() {
    rose(HT, "2026-12-12T16:30", "2026-12-12T18:15");
    rose(SJ, "2026-12-13T07:30", "2026-12-13T09:15");
    rose(PP, "2026-12-13T08:00", "2026-12-13T09:45");
    rose(HT, "2026-12-13T10:00", "2026-12-13T11:45");
    stock(ROSE, 1, 0, 0, 0, 0, 0);
    stock(VIOLET, 1, 0, 1, 0, 1, 0);

    Plan plan = plan();

    assertScore(plan, List.of(0L, 0L, 0L), List.of(0L, 0L, 1L), 2, 36);
    assertEquals(
        PP,
        plan.assignments().stream().filter(a -> a.depth() > 0).findFirst().get().need().church());

    rides.add(new Ride("Father T", HT, SJ, at("2026-12-13T07:00"), at("2026-12-13T07:18")));
    rides.add(new Ride("Father T", SJ, HT, at("2026-12-13T09:20"), at("2026-12-13T09:38")));
    assertScore(plan(), List.of(0L, 0L, 0L), List.of(0L, 0L, 1L), 0, 0);
  }

  /** Worked by hand: cope and veil of HT are free at 16:45 and at OL by 16:57. */
  @Test
  void a_third_benediction_is_served_from_27_minutes_past_five_on() {
    assertScore(benedictions("15:30", "16:45"), List.of(2L, 0L, 0L), List.of(0L, 0L, 0L), 0, 0);
    assertScore(benedictions("16:56", "17:11"), List.of(2L, 0L, 0L), List.of(0L, 0L, 0L), 0, 0);
    assertScore(benedictions("16:57", "17:12"), List.of(0L, 0L, 0L), List.of(0L, 0L, 0L), 1, 12);
    assertScore(benedictions("17:30", "17:45"), List.of(0L, 0L, 0L), List.of(0L, 0L, 0L), 1, 12);
  }

  /** Worked by hand. */
  @Test
  void a_dalmatic_rides_along_in_the_carriage_that_brings_the_chasuble() {
    jubilee();
    for (int deacon = 1; deacon <= 2; deacon++) {
      need(
          new Wearer(needs.get(0).mass(), Role.DEACON, deacon),
          SA,
          needs.get(0).window(),
          PieceKind.DALMATIC,
          WHITE,
          Step.DALMATIC_LEFT_OUT);
    }
    for (String code : List.of("SA-D1", "HT-D1", "HT-D2")) {
      pieces.add(
          WenlowValley.piece(code, PieceKind.DALMATIC, WHITE, code.startsWith("SA") ? SA : HT));
    }

    assertScore(plan(), List.of(0L, 0L, 0L), List.of(0L, 0L, 0L), 1, 14);
  }

  /** J. Kleinberg, É. Tardos, "Algorithm Design" (2005), chapter 4: rooms needed = depth. */
  @Test
  void in_one_church_as_many_pieces_are_wanted_as_needs_at_one_moment() {
    journeys = nowhere();
    int[][] hours = {{0, 3}, {0, 3}, {0, 7}, {4, 7}, {4, 10}, {8, 11}, {8, 11}};
    for (int[] hour : hours) {
      minutes(A, hour[0], hour[1], WHITE);
    }
    whites(3);
    assertEquals(List.of(0L, 0L, 0L), plan().score().unmet());

    pieces.remove(2);
    assertEquals(List.of(2L, 0L, 0L), plan().score().unmet());
  }

  /** Worked by hand: touching is enough, a minute less is not. */
  @Test
  void a_piece_is_carried_to_the_next_mass_if_it_comes_on_the_minute() {
    journeys = bothWays(30, A, B);
    whites(1);
    minutes(A, 0, 60, WHITE);
    minutes(B, 90, 150, WHITE);
    assertScore(plan(), List.of(0L, 0L, 0L), List.of(0L, 0L, 0L), 1, 30);

    needs.remove(1);
    minutes(B, 89, 150, WHITE);
    assertEquals(List.of(1L, 0L, 0L), plan().score().unmet());
  }

  /** P. Hall, "On representatives of subsets" (1935); D. Kőnig (1931). */
  @Test
  void three_who_share_two_pieces_leave_one_unmet_whatever_a_fourth_has() {
    journeys = nowhere();
    IntStream.range(0, 3).forEach(n -> minutes(A, 0, 9, WHITE));
    minutes(A, 0, 9, RED);
    pieces.add(piece("p", A, WHITE));
    pieces.add(piece("q", A, WHITE, RED));
    pieces.add(piece("r", A, RED));

    assertEquals(List.of(1L, 0L, 0L), plan().score().unmet());
  }

  /** Worked by hand: no set of clashing needs shows it, the longest chains do. */
  @Test
  void one_goes_without_though_no_clashing_needs_prove_it() {
    journeys = nowhere();
    minutes(A, 1, 5, RED);
    minutes(A, 3, 6, WHITE);
    minutes(A, 5, 6, GREEN);
    pieces.add(piece("p", A, WHITE, GREEN));
    pieces.add(piece("q", A, WHITE, RED));

    assertEquals(List.of(1L, 0L, 0L), plan().score().unmet());
  }

  /** Worked by hand: each choice forces the next until none is left. */
  @Test
  void one_goes_without_by_forced_choices() {
    journeys = nowhere();
    minutes(A, 3, 5, WHITE);
    minutes(A, 3, 7, RED);
    minutes(A, 4, 6, GREEN);
    minutes(A, 5, 8, VIOLET);
    pieces.add(piece("p", A, GREEN, VIOLET));
    pieces.add(piece("q", A, WHITE, RED, VIOLET));
    pieces.add(piece("r", A, WHITE, GREEN));

    assertEquals(List.of(1L, 0L, 0L), plan().score().unmet());
  }

  /** C. Greene, "Some partitions associated with a partially ordered set" (1976): 4, then 2. */
  @Test
  void two_pieces_serve_six_masses_and_one_serves_four() {
    journeys = bothWays(2, A, B);
    minutes(A, 1, 2, WHITE);
    minutes(B, 3, 6, WHITE);
    minutes(B, 4, 5, WHITE);
    minutes(B, 6, 7, WHITE);
    minutes(A, 7, 10, WHITE);
    minutes(B, 7, 10, WHITE);
    whites(2);
    assertEquals(List.of(0L, 0L, 0L), plan().score().unmet());

    pieces.remove(1);
    assertEquals(List.of(2L, 0L, 0L), plan().score().unmet());
  }

  /** Worked by hand: with shortest ways no need is met by being left out. */
  @Test
  void a_way_round_that_is_quicker_is_taken() {
    List<Journey> ways = new ArrayList<>(roads(10, A, B));
    ways.addAll(roads(10, B, C));
    ways.addAll(roads(100, A, C));
    journeys = Journeys.of(ways);
    minutes(A, 0, 10, WHITE);
    minutes(C, 40, 50, WHITE);
    whites(1);

    assertScore(plan(), List.of(0L, 0L, 0L), List.of(0L, 0L, 0L), 1, 20);
  }

  /** Worked by hand. */
  @Test
  void a_piece_held_elsewhere_or_in_care_is_missing_for_the_second_of_two() {
    journeys = bothWays(5, A, B);
    minutes(A, 0, 10, WHITE);
    minutes(A, 20, 30, WHITE);
    minutes(A, 20, 30, WHITE);
    whites(2);
    Window window = window(15, 25);
    holds.add(new Hold("w2", new MassId(new UUID(9, 9)), B, window));
    assertEquals(List.of(1L, 0L, 0L), plan().score().unmet());

    holds.clear();
    pieces.set(1, Minutes.away(pieces.get(1), 12, 999));
    assertEquals(List.of(1L, 0L, 0L), plan().score().unmet());
  }

  /** Worked by hand. */
  @Test
  void the_principal_celebrant_comes_before_two_concelebrants() {
    journeys = nowhere();
    minutes(A, 0, 50, WHITE);
    concelebrant(A, 0, 20);
    concelebrant(A, 30, 50);
    whites(1);

    Plan plan = plan();

    assertScore(plan, List.of(0L, 0L, 0L), List.of(0L, 0L, 2L), 0, 0);
    assertEquals(Role.PRINCIPAL, plan.assignments().get(0).need().role());
  }

  /** Worked by hand. */
  @Test
  void a_long_journey_is_made_before_a_step_is_taken() {
    journeys = bothWays(90, A, B);
    concelebrant(B, 200, 260);
    whites(1);

    assertScore(plan(), List.of(0L, 0L, 0L), List.of(0L, 0L, 0L), 1, 90);
  }

  /** Worked by hand: two pieces together add what neither adds alone. */
  @Test
  void what_a_further_piece_adds_depends_on_the_others() {
    journeys = nowhere();
    minutes(A, 4, 5, WHITE);
    minutes(A, 4, 8, RED);
    minutes(A, 5, 6, GREEN);
    minutes(A, 6, 7, VIOLET);
    Piece base = piece("base", A, WHITE, RED, VIOLET);
    Piece x = piece("x", A, RED, GREEN, VIOLET);
    Piece y = piece("y", A, WHITE);

    assertEquals(2, covered(base));
    assertEquals(3, covered(base, x));
    assertEquals(2, covered(base, y));
    assertEquals(4, covered(base, x, y));
  }

  /** Worked by hand. */
  @Test
  void one_piece_goes_on_to_the_next_church_rather_than_two_from_home() {
    List<Journey> ways = new ArrayList<>(roads(20, A, B));
    ways.addAll(roads(20, A, C));
    ways.addAll(roads(5, B, C));
    journeys = Journeys.of(ways);
    minutes(B, 60, 120, WHITE);
    minutes(C, 200, 260, WHITE);
    whites(2);

    assertScore(plan(), List.of(0L, 0L, 0L), List.of(0L, 0L, 0L), 2, 25);
  }

  private long covered(Piece... stock) {
    pieces.clear();
    pieces.addAll(List.of(stock));
    return plan().assignments().size();
  }

  private Plan benedictions(String setOut, String cleared) {
    needs.clear();
    pieces.clear();
    Map<ChurchId, String[]> hours =
        Map.of(
            HT, new String[] {"15:30", "16:45"},
            SA, new String[] {"15:30", "16:45"},
            OL, new String[] {setOut, cleared});
    for (ChurchId church : List.of(HT, SA, OL)) {
      String[] hour = hours.get(church);
      Window window = window(at("2026-12-06T" + hour[0]), at("2026-12-06T" + hour[1]));
      for (PieceKind kind : List.of(PieceKind.COPE, PieceKind.HUMERAL_VEIL)) {
        Wearer wearer = new Wearer(mass(church.value().hashCode()), Role.PRINCIPAL, 1);
        need(wearer, church, window, kind, WHITE);
      }
    }
    for (ChurchId church : List.of(HT, SA)) {
      String code = WenlowValley.CODES.get(church);
      pieces.add(WenlowValley.piece(code + "-C", PieceKind.COPE, WHITE, church));
      pieces.add(WenlowValley.piece(code + "-H", PieceKind.HUMERAL_VEIL, WHITE, church));
    }
    return plan();
  }

  private void jubilee() {
    needs(3, SA, "2026-12-08T18:00", "2026-12-08T20:15", WHITE, Step.STOLE_OVER_ALB);
    stock(WHITE, 3, 2, 1, 2, 1, 1);
  }

  private void rose(ChurchId church, String setOut, String cleared) {
    Wearer wearer = new Wearer(mass(needs.size()), Role.PRINCIPAL, 1);
    Window window = window(at(setOut), at(cleared));
    need(wearer, church, window, PieceKind.CHASUBLE, ROSE, Step.VIOLET_FOR_ROSE);
  }

  private void needs(
      int number, ChurchId church, String setOut, String cleared, Colour colour, Step step) {
    for (int person = 1; person <= number; person++) {
      Wearer wearer = new Wearer(mass(0), Role.CONCELEBRANT, person);
      need(wearer, church, window(at(setOut), at(cleared)), PieceKind.CHASUBLE, colour, step);
    }
  }

  private void minutes(ChurchId church, int from, int until, Colour colour) {
    Wearer wearer = new Wearer(mass(needs.size() + 100 * from), Role.PRINCIPAL, 1);
    need(wearer, church, window(from, until), PieceKind.CHASUBLE, colour);
  }

  private void concelebrant(ChurchId church, int from, int until) {
    Wearer wearer = new Wearer(mass(needs.size() + 100 * from), Role.CONCELEBRANT, 1);
    need(wearer, church, window(from, until), PieceKind.CHASUBLE, WHITE, Step.STOLE_OVER_ALB);
  }

  private void need(
      Wearer wearer, ChurchId church, Window window, PieceKind kind, Colour colour, Step... steps) {
    Norm norm = new Norm(steps.length == 0, List.of(steps), "invented");
    needs.add(new Need(wearer, church, window, kind, colour, false, norm));
  }

  private void stock(Colour colour, int... numbers) {
    List<ChurchId> churches = List.of(HT, SA, SJ, OL, PP, SM);
    for (int church = 0; church < numbers.length; church++) {
      for (int number = 1; number <= numbers[church]; number++) {
        String code = WenlowValley.CODES.get(churches.get(church)) + "-" + colour + number;
        pieces.add(piece(code, churches.get(church), colour));
      }
    }
  }

  private void whites(int number) {
    IntStream.rangeClosed(1, number).forEach(n -> pieces.add(piece("w" + n, A, WHITE)));
  }

  private static Traits length(int centimetres) {
    return new Traits("", "", "", centimetres, false, 0);
  }

  private static Piece staying(Piece piece) {
    return new Piece(
        piece.code(), piece.kind(), piece.colours(), piece.home(), true, "", List.of());
  }

  private static MassId mass(int number) {
    return new MassId(new UUID(3, number));
  }

  private static Window window(int from, int until) {
    return window(Minutes.minute(from), Minutes.minute(until));
  }

  private static Window window(Instant from, Instant until) {
    return new Window(from, from, until, until);
  }

  private Plan plan() {
    Span span = new Span(needs, pieces, journeys, Minutes.NO_TURN);
    Situation situation = new Situation(span, holds, rides, traits, Map.of(), fits, List.of());
    Plan plan = new Planner(Solvers.best()).plan(situation, Effort.of(20));
    assertEquals(List.of(), PlanProof.findObjections(plan, situation));
    assertEquals(PlanStatus.PROVEN, plan.status());
    return plan;
  }

  private static void assertScore(
      Plan plan, List<Long> unmet, List<Long> steps, long carriages, long minutes) {
    Score score = plan.score();
    assertEquals(unmet, score.unmet());
    assertEquals(steps, score.steps());
    assertEquals(carriages, score.carriages(), () -> plan.movements().toString());
    assertEquals(minutes, score.minutes());
    assertEquals(carriages, plan.movements().stream().filter(Movement::isCarriage).count());
  }
}
