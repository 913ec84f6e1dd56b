package vestiary.allocation.planner;

import java.util.Objects;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import vestiary.allocation.plan.Plan;

/**
 * How far a planner goes, in units of work and not by the clock, so that the same situation gets
 * the same plan on any machine. A unit is about a second of one core.
 *
 * @param work units, 0 or more, after the first plan is there; 0 leaves it at that
 * @param counting what a journey is counted by
 * @param isCancelled asked now and then; once true the best plan so far is the answer
 * @param onPlan told of each better plan or bound, the first one included
 */
public record Effort(
    double work, Counting counting, BooleanSupplier isCancelled, Consumer<Plan> onPlan) {

  /** What a journey is counted by. */
  public enum Counting {
    /** One for all that rides together. */
    CARRIAGES,
    /** Each piece or set by itself, which is quick to prove and no way to drive. */
    PIECES
  }

  public Effort {
    Objects.requireNonNull(counting, "counting");
    Objects.requireNonNull(isCancelled, "isCancelled");
    Objects.requireNonNull(onPlan, "onPlan");
  }

  /** Carriages, with so much work after the first plan. */
  public static Effort of(double work) {
    return new Effort(work, Counting.CARRIAGES, () -> false, plan -> {});
  }

  /** Each piece's journeys by themselves. */
  public static Effort byPieces() {
    return new Effort(20, Counting.PIECES, () -> false, plan -> {});
  }
}
