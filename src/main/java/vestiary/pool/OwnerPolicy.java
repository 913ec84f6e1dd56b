package vestiary.pool;

import vestiary.calendar.Term;

/** On what terms an owner lets a piece go to another church. */
public enum OwnerPolicy implements Term {
  FREELY,
  ASKING,
  NEVER
}
