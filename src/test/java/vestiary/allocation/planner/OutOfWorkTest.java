package vestiary.allocation.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.allocation.Minutes.A;
import static vestiary.allocation.Minutes.B;
import static vestiary.allocation.Minutes.minute;
import static vestiary.allocation.Minutes.need;
import static vestiary.allocation.Minutes.piece;
import static vestiary.calendar.Colour.RED;
import static vestiary.calendar.Colour.WHITE;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import vestiary.allocation.Journey;
import vestiary.allocation.Journeys;
import vestiary.allocation.Minutes;
import vestiary.allocation.Span;
import vestiary.allocation.plan.Contradiction;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.PlanProof;
import vestiary.allocation.plan.PlanStatus;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Window;

/**
 * Whatever is asked of a planner, and however little it may work: there is a plan, and it holds.
 */
class OutOfWorkTest {

  private final Planner planner = Planner.onThisMachine();

  @Test
  void a_planner_that_is_stopped_before_it_begins_still_gives_a_plan_that_holds() {
    Effort none = new Effort(0, Effort.Counting.CARRIAGES, () -> true, plan -> {});
    for (int seed = 0; seed < 200; seed++) {
      Situation situation = SmallWorld.of(seed, 3);

      Plan plan = planner.plan(situation, none);

      assertEquals(List.of(), PlanProof.findObjections(plan, situation), "case " + seed);
    }
  }

  @Test
  void two_holds_that_no_journey_joins_are_told_and_the_other_needs_are_met() {
    Situation situation =
        Situation.of(
                new Span(
                    List.of(need(3, A, 100, 160, RED)),
                    List.of(piece("r", A, RED), piece("w", A, WHITE)),
                    Minutes.bothWays(30, A, B),
                    Minutes.NO_TURN))
            .withHolds(List.of(hold(1, A, 100, 150), hold(2, B, 170, 200)));

    Plan plan = planner.plan(situation, Effort.of(5));

    assertEquals(
        List.of(new Contradiction("w", A, minute(150), B, minute(170))), plan.contradictions());
    assertEquals(PlanStatus.PROVEN, plan.status());
    assertEquals(1, plan.assignments().size());
    assertEquals(List.of(), PlanProof.findObjections(plan, situation));
  }

  @Test
  void what_never_leaves_its_church_and_is_held_elsewhere_is_told() {
    Piece stays = new Piece("w", PieceKind.CHASUBLE, List.of(WHITE), A, true, "", List.of());
    Situation situation =
        Situation.of(
                new Span(
                    List.of(need(3, A, 300, 360, WHITE)),
                    List.of(stays),
                    Minutes.bothWays(30, A, B),
                    Minutes.NO_TURN))
            .withHolds(List.of(hold(1, B, 100, 150)));

    Plan plan = planner.plan(situation, Effort.of(5));

    assertEquals(
        List.of(new Contradiction("w", A, Instant.MAX, B, minute(100))), plan.contradictions());
    assertEquals(1, plan.assignments().size());
    assertEquals(List.of(), PlanProof.findObjections(plan, situation));
  }

  /**
   * Held while away, held twice, held where they never go: nothing that is entered stops a plan.
   */
  @Test
  void whatever_holds_contradict_there_is_a_plan_that_holds() {
    for (int seed = 0; seed < 400; seed++) {
      Situation situation = withHoldsAtRandom(SmallWorld.of(seed, 3), new Random(seed));

      Plan plan = planner.plan(situation, Effort.of(1));

      assertEquals(List.of(), PlanProof.findObjections(plan, situation), "case " + seed);
    }
  }

  private static Situation withHoldsAtRandom(Situation situation, Random random) {
    List<Hold> holds = new ArrayList<>(situation.holds());
    for (Piece piece : situation.span().pieces()) {
      List<Need> needs = situation.span().needs();
      if (random.nextInt(3) == 0 && !needs.isEmpty()) {
        Need need = needs.get(random.nextInt(needs.size()));
        holds.add(new Hold(piece.code(), need.mass(), need.church(), need.window()));
      }
    }
    return situation.withHolds(holds.stream().distinct().toList());
  }

  @Test
  void a_contradiction_that_a_plan_keeps_to_itself_is_objected_to() {
    Situation situation =
        Situation.of(
                new Span(
                    List.of(),
                    List.of(piece("w", A, WHITE)),
                    Minutes.bothWays(30, A, B),
                    Minutes.NO_TURN))
            .withHolds(List.of(hold(1, A, 100, 150), hold(2, B, 170, 200)));
    Plan plan = planner.plan(situation, Effort.of(5));
    Plan silent =
        new Plan(plan.provisions(), plan.movements(), plan.score(), plan.bounds(), List.of());

    assertEquals(
        List.of("w cannot be where it is held"), PlanProof.findObjections(silent, situation));
  }

  /** Nothing that leads to a church leads back from it. */
  @Test
  void a_road_that_leads_one_way_only_is_driven_one_way_only() {
    Journeys there = Journeys.of(List.of(new Journey(A, B, Duration.ofMinutes(10))));
    Situation situation =
        Situation.of(
            new Span(
                List.of(need(1, B, 100, 150, WHITE), need(2, A, 200, 250, WHITE)),
                List.of(piece("w", A, WHITE)),
                there,
                Minutes.NO_TURN));

    Plan plan = planner.plan(situation, Effort.of(5));

    assertEquals(1, plan.unmet().size());
    assertTrue(plan.movements().stream().allMatch(one -> one.from().equals(A)));
    assertEquals(List.of(), PlanProof.findObjections(plan, situation));
  }

  private static Hold hold(int mass, ChurchId church, int from, int until) {
    Window window = new Window(minute(from), minute(from), minute(until), minute(until));
    return new Hold("w", new MassId(new UUID(1, mass)), church, window);
  }
}
