package vestiary.calendar;

/** Whether the Ascension is kept on its Thursday or on the Sunday after. Source: UNLY 7 b, 25. */
public enum AscensionOn implements Term {
  THURSDAY,
  SUNDAY
}
