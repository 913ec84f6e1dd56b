package vestiary.allocation.celebrant;

import java.time.LocalDateTime;
import java.time.LocalTime;
import vestiary.calendar.Day;

/**
 * Whether taking part in a Mass fulfils the precept: any Mass in a Catholic rite on the Sunday or
 * holy day itself, or in the evening of the day before, whichever Mass is said. A wedding at 17:00
 * on a Saturday does, one at 14:00 does not.
 *
 * <p>Source: Code of Canon Law, canon 1248 § 1. It says "evening" and no hour; from which hour that
 * is, dioceses settle.
 */
public final class Precept {

  private Precept() {}

  /**
   * @param start local time
   * @param day the calendar's day of that date
   * @param next the day after
   * @param evening the hour from which it is evening, included
   */
  public static boolean isFulfilledBy(LocalDateTime start, Day day, Day next, LocalTime evening) {
    boolean inTheEvening = !start.toLocalTime().isBefore(evening);
    return day.obligation() || inTheEvening && next.obligation();
  }
}
