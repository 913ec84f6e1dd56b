package vestiary.allocation.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.PlanProof;
import vestiary.allocation.plan.PlanStatus;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Score;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.solver.Solver;

/**
 * What plans are held to whatever solver makes them: small random days against every assignment
 * there is, measure by measure.
 */
abstract class PlansOfEverySolver {

  private final Planner planner;
  private final int cases;

  PlansOfEverySolver(Solver solver, int cases) {
    this.planner = new Planner(solver);
    this.cases = cases;
  }

  @Test
  void between_two_churches_a_plan_is_as_good_as_the_best_of_all_assignments() {
    int unmet = 0;
    int carried = 0;
    int tried = 0;
    for (int seed = 0; seed < cases; seed++) {
      Situation situation = SmallWorld.of(seed, 2);
      Plan plan = planner.plan(situation, Effort.of(20));
      if (plan.contradictions().isEmpty()) {
        long[] best = checked(plan, situation, "case " + seed);
        if (best[6] == 0) {
          assertEquals(numbers(best, 7, 10), journeys(plan.score()), "case " + seed);
        }
        tried++;
        unmet += plan.unmet().isEmpty() ? 0 : 1;
        carried += plan.score().carriages() > 0 ? 1 : 0;
      }
    }
    assertTrue(tried > 0.9 * cases, "only " + tried + " cases without contradictions");
    assertTrue(unmet > cases / 20 && carried > cases / 5, unmet + " and " + carried);
  }

  /** A set that rides along through the third church can be better than any that goes straight. */
  @Test
  void among_three_churches_a_plan_is_as_good_or_sends_something_by_the_third() {
    int better = 0;
    for (int seed = 0; seed < cases; seed++) {
      Situation situation = SmallWorld.of(1_000_000 + seed, 3);
      Plan plan = planner.plan(situation, Effort.of(20));
      if (plan.contradictions().isEmpty()) {
        long[] best = checked(plan, situation, "case " + seed);
        if (best[6] == 0) {
          int order = compare(numbers(best, 7, 10), journeys(plan.score()));
          assertTrue(order >= 0, "case " + seed + ": " + Arrays.toString(best) + plan.score());
          better += order > 0 ? 1 : 0;
        }
      }
    }
    assertTrue(better <= cases / 10, better + " of " + cases);
  }

  /**
   * Where a set must be taken apart, which one and what then is best is not asked: nothing may be
   * called proven but what no assignment, with sets taken apart at will, comes under.
   */
  @Test
  void where_a_set_must_be_parted_nothing_is_called_proven_that_can_be_bettered() {
    int parted = 0;
    for (int seed = 0; seed < cases; seed++) {
      Situation situation = SmallWorld.ofHalves(seed, 2);
      Plan plan = planner.plan(situation, Effort.of(20));
      if (plan.contradictions().isEmpty() && checked(plan, situation, "case " + seed)[6] > 0) {
        parted++;
        long[] best = best(plan, situation, true);
        String name = "case " + seed + ": " + Arrays.toString(best) + plan;
        Score least =
            new Score(numbers(best, 0, 3), numbers(best, 3, 6), best[7], best[8], best[9], 0);
        assertTrue(plan.bounds().compareTo(least) <= 0, name);
        if (plan.status() == PlanStatus.PROVEN) {
          assertEquals(least, plan.score(), name);
        }
      }
    }
    assertTrue(parted > cases / 40, parted + " of " + cases);
  }

  private static long[] checked(Plan plan, Situation situation, String name) {
    assertEquals(List.of(), PlanProof.findObjections(plan, situation), name);
    long[] best = best(plan, situation, false);
    assertEquals(numbers(best, 0, 3), plan.score().unmet(), name);
    assertEquals(numbers(best, 3, 6), plan.score().steps(), name);
    if (best[6] == 0) {
      assertEquals(plan.score(), plan.bounds(), name);
    }
    return best;
  }

  private static long[] best(Plan plan, Situation situation, boolean partingFreely) {
    List<Provision.Worn> held = plan.assignments().stream().filter(Provision.Worn::held).toList();
    return new EveryAssignment(situation, held, partingFreely).best();
  }

  private static List<Long> journeys(Score score) {
    return List.of(score.carriages(), score.minutes(), score.preferences());
  }

  private static int compare(List<Long> one, List<Long> other) {
    return Arrays.compare(one.toArray(Long[]::new), other.toArray(Long[]::new));
  }

  private static List<Long> numbers(long[] best, int from, int until) {
    return Arrays.stream(best, from, until).boxed().toList();
  }
}
