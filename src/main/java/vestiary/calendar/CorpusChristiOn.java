package vestiary.calendar;

/**
 * Whether the Body and Blood of Christ is kept on its Thursday or on the Sunday after. UNLY 7 c.
 */
public enum CorpusChristiOn implements Term {
  THURSDAY,
  SUNDAY
}
