package vestiary.vesting;

import vestiary.calendar.Term;

/**
 * In what capacity somebody vests. A bishop who presides is the principal celebrant; whoever leads
 * a liturgy that is no Mass is its minister.
 *
 * <p>Source: GIRM 337 to 339 and 209.
 */
public enum Role implements Term {
  PRINCIPAL,
  CONCELEBRANT,
  DEACON,
  MINISTER
}
