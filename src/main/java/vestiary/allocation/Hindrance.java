package vestiary.allocation;

import vestiary.calendar.Term;

/** Why a piece of the right kind and colour serves none of the needs of a finding. */
public enum Hindrance implements Term {
  /** It is away, or leaves or comes back too late for the journey. */
  AWAY,
  /** It never leaves its own church. */
  STAYS_HOME,
  /** No journey from its own church is known. */
  NO_JOURNEY,
  /** Its owner does not give it for that Mass. */
  KEPT_BACK
}
