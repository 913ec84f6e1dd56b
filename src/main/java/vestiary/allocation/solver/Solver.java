package vestiary.allocation.solver;

import java.util.List;

/** Minimises several measures of one program, each among the best of those before it. */
public interface Solver {

  /**
   * Whole values of all columns, with the value of every measure and the least it can be.
   *
   * @param program with at least one solution
   * @param tiers for each measure the cost of each column, the weightiest measure first; whole
   *     numbers, so that a bound may be rounded up
   * @param hint values to start from, or none at all; they need not be feasible
   * @param work how long to go on, and who is told
   * @return the best found; without values if the work allowed was too little to find any
   */
  Answer minimise(Program program, List<long[]> tiers, long[] hint, Work work);
}
