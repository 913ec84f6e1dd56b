package vestiary.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A plan as it is now.
 *
 * @param keeping whether it leaves alone whatever no change has touched
 * @param progress none until there is a first plan
 * @param result empty until it is over
 * @param failure why there is none; empty if it did not fail
 * @param cancelled whether somebody wants it to end with what is found
 * @param applied whether it is the newest that was applied for any of its days
 */
record PlanFound(
    String id,
    LocalDate first,
    LocalDate last,
    boolean keeping,
    PlanState state,
    List<Progress> progress,
    PlanResult result,
    String failure,
    boolean cancelled,
    boolean applied) {

  PlanFound {
    progress = List.copyOf(progress);
  }

  static PlanFound of(PlanRow row, boolean applied) {
    return new PlanFound(
        row.id.toString(),
        row.firstDate,
        row.lastDate,
        row.keeping,
        row.state(),
        Stream.ofNullable(row.progress).toList(),
        row.result == null ? PlanResult.NONE : row.result,
        row.failure,
        row.cancelled,
        applied);
  }

  /** How good the best so far is; empty until there is one. */
  Optional<Progress> findProgress() {
    return progress.stream().findFirst();
  }

  boolean isAtWork() {
    return state.isAtWork();
  }

  /** Whether there is anything to apply. */
  boolean isUsable() {
    return (state == PlanState.PROVEN || state == PlanState.STOPPED) && !progress.isEmpty();
  }
}
