package vestiary.plan;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

/** After somebody's no, has the plan that holds made anew where it is touched; applies nothing. */
@ApplicationScoped
public class PlanAnew {

  private final ReadPlan plans;
  private final PlanSpan span;

  PlanAnew(ReadPlan plans, PlanSpan span) {
    this.plans = plans;
    this.span = span;
  }

  /**
   * Asks for a plan in the place of the one that holds for a date.
   *
   * @return its id; empty if none holds
   */
  public Optional<UUID> touching(LocalDate date) {
    return plans.standing(date, date).stream()
        .findFirst()
        .map(
            plan ->
                span.ask(
                    new PlanSpan.Request(plan.first().toString(), plan.last().toString(), true)))
        .map(UUID::fromString);
  }
}
