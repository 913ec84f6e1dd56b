package vestiary.schedule;

import java.time.LocalDate;

/**
 * What a change of a pattern does to one date.
 *
 * @param mass the Mass as it is; {@code null} where one is yet to come
 * @param date for which the pattern has it afterwards, or else had it
 * @param isOfPattern whether the pattern has that date afterwards
 */
record Effect(Kind kind, MassRow mass, LocalDate date, boolean isOfPattern) {

  enum Kind {
    /** To another hour or church, or it lasts otherwise. */
    MOVES,
    /** Another celebrant, other numbers or another note. */
    CHANGES,
    /** Is not said any more. */
    GOES,
    /** Is said from now on. */
    COMES,
    /** Entered, moved, cancelled or changed by hand, and so left as it is. */
    STAYS,
    /** As the pattern has it before and after. */
    SAME
  }
}
