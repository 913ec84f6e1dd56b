package vestiary.allocation.celebrant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

  /**
   * Months with days over which the relaxation is not whole: before its faces were searched, the
   * first left thirteen Masses without a celebrant that all could have one.
   */
  @ParameterizedTest
  @CsvSource({"12, 0", "15, 8", "16, 4", "24, 4", "28, 4", "4, 12"})
  void a_month_of_250_masses_is_proven_best_within_the_work_that_a_proposal_is_given(
      int seed, int unserved) {
    Question question = new InventedPriests(seed).month(10, 12, 250);

    Proposal proposal = DivideMasses.divide(question, Solvers.best(), Work.of(10));

    assertTrue(proposal.proven(), proposal.bounds() + " of " + proposal.values());
    assertEquals(unserved, proposal.values().unservedFirst());
    assertEquals(List.of(), ProposalProof.findObjections(question, proposal));
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
