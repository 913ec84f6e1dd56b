package vestiary.calendar;

/** Whether a Mass may be said: freely, by the leave recorded with it, or not. */
public enum Verdict implements Term {
  PERMITTED,
  WITH_LEAVE,
  NOT_PERMITTED
}
