package vestiary.people;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import vestiary.web.English;

/** How pages say when somebody is away. */
public final class AbsenceWords {

  private AbsenceWords() {}

  /**
   * For example "from 7 to 12 December 2026", both days included, "on 7 December 2026 from 14:00 to
   * 16:00" or "from 7 December 2026 until further notice".
   */
  public static String span(Absence one, ZoneId zone) {
    ZonedDateTime from = one.from().atZone(zone);
    if (one.isOpen()) {
      return "from %s until further notice".formatted(moment(from));
    }
    return span(from, one.to().atZone(zone));
  }

  /** The same of any time; the end is not included. */
  public static String span(Instant begin, Instant end, ZoneId zone) {
    return span(begin.atZone(zone), end.atZone(zone));
  }

  private static String span(ZonedDateTime from, ZonedDateTime to) {
    LocalDate first = from.toLocalDate();
    LocalDate last = to.minusNanos(1).toLocalDate();
    if (isMidnight(from) && isMidnight(to)) {
      return first.equals(last)
          ? "on " + English.dateAndYear(first)
          : "from " + English.span(first, last);
    }
    return first.equals(last)
        ? "on %s from %s to %s".formatted(English.dateAndYear(first), clock(from), lastClock(to))
        : "from %s to %s".formatted(moment(from), end(to));
  }

  private static String moment(ZonedDateTime time) {
    String date = English.dateAndYear(time.toLocalDate());
    return isMidnight(time) ? date : date + ", " + clock(time);
  }

  /** A midnight is the end of the day before. */
  private static String end(ZonedDateTime time) {
    return isMidnight(time) ? English.dateAndYear(time.toLocalDate().minusDays(1)) : moment(time);
  }

  private static String lastClock(ZonedDateTime time) {
    return isMidnight(time) ? "midnight" : clock(time);
  }

  private static String clock(ZonedDateTime time) {
    return English.clock(time);
  }

  private static boolean isMidnight(ZonedDateTime time) {
    return time.toLocalTime().equals(LocalTime.MIDNIGHT);
  }
}
