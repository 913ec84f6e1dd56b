package vestiary.plan;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;

/** Ends the work on a plan. What was found so far is kept, and can be applied. */
@ApplicationScoped
class CancelPlan {

  private final PlanRows plans;

  CancelPlan(PlanRows plans) {
    this.plans = plans;
  }

  /**
   * Cancels; one that is over stays as it is.
   *
   * @throws vestiary.problem.Refused if there is none of that id
   */
  @Transactional
  void cancel(String id) {
    PlanRow row = plans.getLocked(id);
    if (row.state().isAtWork()) {
      row.cancelled = true;
      if (row.state() == PlanState.QUEUED) {
        row.status = PlanState.STOPPED.id();
      }
    }
  }
}
