package vestiary.plan;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import vestiary.pool.Planned;

/** Whether a plan has taken the place of what was planned before. */
@ApplicationScoped
public class PlansSince {

  private final PlanRows plans;

  PlansSince(PlanRows plans) {
    this.plans = plans;
  }

  /** Whether a plan that holds for that date replaced some of this when it was applied. */
  public boolean haveReplaced(Planned planned, LocalDate date) {
    return plans.appliedWithin(date, date).stream()
        .filter(row -> row.replaced != null)
        .flatMap(row -> row.replaced.worn().stream())
        .anyMatch(planned.worn()::contains);
  }
}
