package vestiary.people;

import static vestiary.web.Speech.say;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import vestiary.web.Speech;

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
      return say("from %s until further notice", moment(from));
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
          ? say("on %s", Speech.dateAndYear(first))
          : say("from %s", Speech.span(first, last));
    }
    return first.equals(last)
        ? say("on %s from %s to %s", Speech.dateAndYear(first), clock(from), lastClock(to))
        : say("from %s to %s", moment(from), end(to));
  }

  private static String moment(ZonedDateTime time) {
    String date = Speech.dateAndYear(time.toLocalDate());
    return isMidnight(time) ? date : date + ", " + clock(time);
  }

  /** A midnight is the end of the day before. */
  private static String end(ZonedDateTime time) {
    return isMidnight(time) ? Speech.dateAndYear(time.toLocalDate().minusDays(1)) : moment(time);
  }

  private static String lastClock(ZonedDateTime time) {
    return isMidnight(time) ? say("midnight") : clock(time);
  }

  private static String clock(ZonedDateTime time) {
    return Speech.clock(time);
  }

  private static boolean isMidnight(ZonedDateTime time) {
    return time.toLocalTime().equals(LocalTime.MIDNIGHT);
  }
}
