package vestiary.allocation.solver;

import java.util.function.BooleanSupplier;

/**
 * How much work may be done, counted in steps of the solver and not by the clock, so that the same
 * question gets the same answer on a slow machine. A unit is about a second's work of one core.
 *
 * @param units 0 or more; 0 means that whatever needs a search is left
 * @param isCancelled asked now and then; once true, the best so far is the answer
 */
public record Work(double units, BooleanSupplier isCancelled) {

  /** So many units, not to be cancelled. */
  public static Work of(double units) {
    return new Work(units, () -> false);
  }

  Work withUnits(double left) {
    return new Work(Math.max(0, left), isCancelled);
  }
}
