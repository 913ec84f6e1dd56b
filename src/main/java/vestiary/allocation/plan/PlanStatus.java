package vestiary.allocation.plan;

import vestiary.calendar.Term;

/** Whether a plan is shown to be the best there is, or the work allowed was over first. */
public enum PlanStatus implements Term {
  PROVEN,
  STOPPED
}
