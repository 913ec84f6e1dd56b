package vestiary.inventory;

import vestiary.calendar.Term;

/** What somebody saw who looked for a piece. */
public enum Finding implements Term {
  THERE,
  MISSING,
  /** Not in its place, and somewhere else. */
  ELSEWHERE,
  DAMAGED;

  /** For example "in another place". */
  String words() {
    return this == ELSEWHERE ? "in another place" : id();
  }
}
