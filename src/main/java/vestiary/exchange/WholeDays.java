package vestiary.exchange;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/** Times that begin and end with days, which a list can say. */
record WholeDays(ZoneId zone) {

  /** Whether a day begins at that moment. */
  boolean isFrom(Instant moment) {
    return first(moment).atStartOfDay(zone).toInstant().equals(moment);
  }

  /** The day that the moment lies in. */
  LocalDate first(Instant moment) {
    return LocalDate.ofInstant(moment, zone);
  }

  /** The last day of a time that ends at that moment, which is no part of it. */
  LocalDate last(Instant end) {
    return LocalDate.ofInstant(end.minus(Duration.ofNanos(1)), zone);
  }
}
