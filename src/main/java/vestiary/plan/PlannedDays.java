package vestiary.plan;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import vestiary.planning.SpanToCheck;

/** The dates of a plan as moments: from the first midnight to the one after the last date. */
record PlannedDays(Instant from, Instant until) {

  static PlannedDays of(LocalDate first, LocalDate last, ZoneId zone) {
    return new PlannedDays(
        first.atStartOfDay(zone).toInstant(), last.plusDays(1).atStartOfDay(zone).toInstant());
  }

  /** Whether it lies within. */
  boolean contain(Instant moment) {
    return !moment.isBefore(from) && moment.isBefore(until);
  }

  static PlannedDays of(SpanToCheck span) {
    return of(span.first(), span.last(), span.cluster().zone());
  }
}
