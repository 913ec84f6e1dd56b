package vestiary.allocation.planner;

import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.Score;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.solver.Solver;
import vestiary.allocation.solver.Solvers;

/**
 * Makes plans: first what can be met at all and with which substitutes, day by day; then over the
 * whole span, keeping to that, with the fewest carriages, the fewest minutes driven, what people
 * prefer, and the least change. The same situation gets the same plan.
 */
public final class Planner {

  private final Solver solver;

  /** With the given solver. */
  public Planner(Solver solver) {
    this.solver = solver;
  }

  /** With the best solver of this machine. */
  public static Planner onThisMachine() {
    return new Planner(Solvers.best());
  }

  /** The best plan the effort allows, with its bounds. */
  public Plan plan(Situation situation, Effort effort) {
    return new Planning(situation, effort, solver).plan();
  }

  /**
   * What can be met and with which substitutes, journeys and preferences left aside: the first two
   * parts of the best score.
   */
  public Score coverage(Situation situation) {
    return new Planning(situation, Effort.of(0), solver).coverageScore();
  }
}
