package vestiary.pattern;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;

/**
 * The hour of a recurring Mass on the clock of its church, the same in summer and winter. In
 * spring's gap the clock's next hour is taken, so that no Mass is lost; of the two such hours in
 * autumn, the earlier.
 */
public record LocalHour(LocalTime time, ZoneId zone) {

  /** The moment at which the Mass of that date begins. */
  public Instant on(LocalDate date) {
    return ZonedDateTime.of(date, time, zone).toInstant();
  }
}
