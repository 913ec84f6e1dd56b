package vestiary.allocation.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.PlanProof;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Score;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.solver.Solvers;

/** Plans of small random days against every assignment there is, measure by measure. */
class EveryAssignmentTest {

  private static final int CASES = 2500;

  @Test
  void a_plan_is_as_good_as_the_best_of_all_assignments() {
    Planner planner = new Planner(Solvers.best());
    int unmet = 0;
    int carried = 0;
    for (int seed = 0; seed < CASES; seed++) {
      Situation situation = SmallWorld.of(seed, 2);
      Plan plan = planner.plan(situation, Effort.of(20));
      if (!plan.contradictions().isEmpty()) {
        continue;
      }
      String name = "case " + seed;
      assertEquals(List.of(), PlanProof.findObjections(plan, situation), name);
      long[] best = new EveryAssignment(situation, held(plan)).best();
      Score score = plan.score();
      assertEquals(numbers(best, 0, 3), score.unmet(), name);
      assertEquals(numbers(best, 3, 6), minus(score.steps(), Tally.steps(held(plan))), name);
      assertEquals(score, plan.bounds(), name);
      if (best[6] == 0) {
        assertEquals(best[7], score.carriages(), name);
        assertEquals(best[8], score.minutes(), name);
        assertEquals(best[9], score.preferences(), name);
      }
      unmet += plan.unmet().isEmpty() ? 0 : 1;
      carried += score.carriages() > 0 ? 1 : 0;
    }
    assertTrue(unmet > CASES / 20 && carried > CASES / 5, unmet + " and " + carried);
  }

  private static List<Provision.Worn> held(Plan plan) {
    return plan.assignments().stream().filter(Provision.Worn::held).toList();
  }

  private static List<Long> numbers(long[] best, int from, int until) {
    return Arrays.stream(best, from, until).boxed().toList();
  }

  private static List<Long> minus(List<Long> some, List<Long> others) {
    return Stream.of(0, 1, 2).map(at -> some.get(at) - others.get(at)).toList();
  }
}
