package vestiary.vesting;

import vestiary.calendar.Term;

/**
 * Which substitute a concelebrant without a chasuble of the day takes first: stole over alb, as
 * Redemptionis Sacramentum 124 lists them, or a white chasuble.
 */
public enum LadderOrder implements Term {
  STOLE,
  WHITE
}
