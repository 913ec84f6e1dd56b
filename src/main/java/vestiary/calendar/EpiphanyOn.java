package vestiary.calendar;

/** Whether the Epiphany is kept on 6 January or on the Sunday from 2 to 8 January. UNLY 7 a, 37. */
public enum EpiphanyOn implements Term {
  DATE,
  SUNDAY
}
