package vestiary.plan;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Plans as they are now. */
@ApplicationScoped
class ReadPlan {

  private final PlanRows plans;
  private final PlanWatch watch;

  ReadPlan(PlanRows plans, PlanWatch watch) {
    this.plans = plans;
    this.watch = watch;
  }

  /**
   * The plan of that id.
   *
   * @throws vestiary.problem.Refused if there is none
   */
  PlanFound get(String id) {
    return QuarkusTransaction.joiningExisting().call(() -> found(plans.get(id)));
  }

  /** The same once it is over, or as it is after so long. */
  PlanFound await(String id, Duration longest) {
    return watch.await(() -> get(id), plan -> !plan.isAtWork(), longest);
  }

  /** The newest that was applied for any of these dates, both included. */
  Optional<PlanFound> findApplied(LocalDate first, LocalDate last) {
    return QuarkusTransaction.joiningExisting()
        .call(
            () ->
                plans.appliedWithin(first, last).stream()
                    .findFirst()
                    .map(row -> PlanFound.of(row, true)));
  }

  /**
   * The plans that hold for some of these dates, both included: each is the newest that was applied
   * for all of its own.
   */
  List<PlanFound> standing(LocalDate first, LocalDate last) {
    return QuarkusTransaction.joiningExisting()
        .call(
            () ->
                plans.appliedWithin(first, last).stream()
                    .map(this::found)
                    .filter(PlanFound::applied)
                    .toList());
  }

  private PlanFound found(PlanRow row) {
    boolean applied =
        row.appliedAt != null
            && plans.appliedWithin(row.firstDate, row.lastDate).get(0).id.equals(row.id);
    return PlanFound.of(row, applied);
  }
}
