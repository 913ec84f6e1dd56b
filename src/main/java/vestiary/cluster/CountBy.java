package vestiary.cluster;

import vestiary.calendar.Term;

/** Which day a priest's evening Mass is counted for; dioceses differ. */
public enum CountBy implements Term {
  CALENDAR,
  LITURGICAL
}
