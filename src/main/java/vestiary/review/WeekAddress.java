package vestiary.review;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.IsoFields;
import java.time.temporal.TemporalAdjusters;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Which week an address names: pages by a date in it, the API by its number (ISO 8601). */
final class WeekAddress {

  private static final int MARGIN_DAYS = 14;

  private WeekAddress() {}

  /** The Monday of the week in which a date lies. */
  static LocalDate monday(LocalDate date) {
    return date.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
  }

  /**
   * The Monday of the week that a page names by one of its dates, as in 2026-12-08.
   *
   * @throws Refused if that is no date, or one beyond the calendar
   */
  static LocalDate ofDate(String text) {
    try {
      return within(LocalDate.parse(text), text);
    } catch (DateTimeException e) {
      throw new Refused(new Refusal.NotThere("week", text));
    }
  }

  /**
   * The Monday of a week by its number, as in 2026-W49.
   *
   * @throws Refused if there is no such week, or it lies beyond the calendar
   */
  static LocalDate ofNumber(String text) {
    try {
      return within(LocalDate.parse(text + "-1", DateTimeFormatter.ISO_WEEK_DATE), text);
    } catch (DateTimeException e) {
      throw new Refused(new Refusal.NotThere("week", text));
    }
  }

  /** As in 2026-W49. */
  static String number(LocalDate monday) {
    return "%d-W%02d"
        .formatted(
            monday.get(IsoFields.WEEK_BASED_YEAR), monday.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
  }

  private static LocalDate within(LocalDate date, String text) {
    if (date.isBefore(LiturgicalCalendar.FIRST.plusDays(MARGIN_DAYS))
        || date.isAfter(LiturgicalCalendar.LAST.minusDays(MARGIN_DAYS))) {
      throw new Refused(new Refusal.NotThere("week", text));
    }
    return monday(date);
  }
}
