package vestiary.plan;

import vestiary.calendar.Term;

/** How far a plan is. */
enum PlanState implements Term {
  /** Waits for a copy of the server. */
  QUEUED,
  RUNNING,
  /** Shown to be the best there is. */
  PROVEN,
  /** The best found before the work allowed was over, or somebody cancelled. */
  STOPPED,
  /** There is none, and a sentence says why. */
  FAILED;

  boolean isAtWork() {
    return this == QUEUED || this == RUNNING;
  }
}
