package vestiary.plan;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;

/** Whether a plan has taken the place of what was planned before. */
@ApplicationScoped
public class PlansSince {

  private final PlanRows plans;

  PlansSince(PlanRows plans) {
    this.plans = plans;
  }

  /** Whether a plan that holds for that date was applied after that moment. */
  public boolean isApplied(LocalDate date, Instant moment) {
    return plans.appliedWithin(date, date).stream().anyMatch(row -> row.appliedAt.isAfter(moment));
  }
}
