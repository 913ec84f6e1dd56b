package vestiary.calendar;

/** To which Sunday a celebration of the week is taken for the good of the faithful. UNLY 58. */
public enum SundayBeside implements Term {
  BEFORE,
  AFTER,
  /** The one with fewer days between; if that is taken, the other. */
  NEAREST
}
