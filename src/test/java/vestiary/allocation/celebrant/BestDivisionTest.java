package vestiary.allocation.celebrant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.allocation.solver.Solver;
import vestiary.allocation.solver.Solvers;
import vestiary.allocation.solver.Work;

/** A proposal beside the best of all divisions, level by level. */
class BestDivisionTest {

  private static final Work PLENTY = Work.of(20);

  @Test
  void thousands_of_small_cases_are_divided_as_well_as_by_trying_all() {
    hold(3_000, Solvers.best());
  }

  @Test
  void the_solver_without_natives_divides_them_as_well() {
    hold(150, Solvers.pureJava());
  }

  @Test
  void the_same_question_gets_the_same_answer() {
    Question question = new InventedPriests(7).month(5, 6, 60);

    Proposal once = DivideMasses.divide(question, Solvers.best(), PLENTY);

    for (int time = 0; time < 3; time++) {
      assertEquals(once, DivideMasses.divide(question, Solvers.best(), PLENTY));
    }
  }

  private static void hold(int cases, Solver solver) {
    for (int seed = 0; seed < cases; seed++) {
      Question question = new InventedPriests(seed).few();
      Proposal proposal = DivideMasses.divide(question, solver, PLENTY);
      assertEquals(AllDivisions.best(question), proposal.values().asList(), "case " + seed);
      assertTrue(proposal.proven(), "case " + seed);
      assertEquals(List.of(), ProposalProof.findObjections(question, proposal), "case " + seed);
      assertTrue(
          proposal.wants().stream().allMatch(want -> want.ground() != Want.Ground.SEARCHED),
          "case " + seed + " shows every want");
    }
  }
}
