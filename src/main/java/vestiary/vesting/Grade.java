package vestiary.vesting;

import vestiary.calendar.Term;

/** For which days a piece is meant by its making; common practice, no source. */
public enum Grade implements Term {
  FERIAL,
  FESTIVE,
  SOLEMN
}
