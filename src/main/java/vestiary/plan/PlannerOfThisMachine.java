package vestiary.plan;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import vestiary.allocation.planner.Planner;

/** Which planner is at work: the one with the best solver that this machine can run. */
class PlannerOfThisMachine {

  @Produces
  @Singleton
  Planner planner() {
    return Planner.onThisMachine();
  }
}
