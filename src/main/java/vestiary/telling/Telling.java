package vestiary.telling;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;

/**
 * How a cluster tells its people.
 *
 * @param weekday on which the letter of the week leaves
 * @param hour at which it leaves, by the cluster's clock
 * @param officeDays days before a Mass with a bishop by which his office has its sheet, 1 to 90
 * @param namesPublic whether celebrants are named in the Mass times for the people
 */
public record Telling(DayOfWeek weekday, LocalTime hour, int officeDays, boolean namesPublic) {

  /** Of a cluster that has chosen nothing (common practice, no source). */
  public static final Telling USUAL = new Telling(DayOfWeek.FRIDAY, LocalTime.of(9, 0), 10, false);

  /** The last moment, at or before now, at which letters of the week were due. */
  ZonedDateTime lastDue(ZonedDateTime now) {
    LocalDate day =
        now.toLocalDate()
            .minusDays(Math.floorMod(now.getDayOfWeek().getValue() - weekday.getValue(), 7));
    ZonedDateTime due = day.atTime(hour).atZone(now.getZone());
    return due.isAfter(now) ? day.minusWeeks(1).atTime(hour).atZone(now.getZone()) : due;
  }
}
