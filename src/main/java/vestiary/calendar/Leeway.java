package vestiary.calendar;

/** Whether another Mass than the evening's own may be said on an evening. */
public enum Leeway implements Term {
  /** The norm settles the evening. */
  NONE,
  /** No law settles it: the Mass of this day and that of the next may both be said. */
  EITHER,
  /** The next day's Vigil Mass may be said where rector or bishop judges it good. */
  BY_LEAVE
}
