package vestiary.assigning;

import static vestiary.web.Speech.say;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/**
 * The dates for which celebrants are looked at: a week, a month, or a span of one's own.
 *
 * @param last included
 */
record Dates(LocalDate first, LocalDate last) {

  static final int MOST_DAYS = 62;

  private static final int DAYS_OF_WEEK = 7;

  /** What is counted around them must lie within the calendar, and so must the month beside. */
  private static final int MARGIN_DAYS = 100;

  /**
   * Of a query, closed at both ends.
   *
   * @throws Refused if they are none, too many, or beyond the calendar
   */
  static Dates parse(String from, String to) {
    Asked asked = new Asked();
    Asked.Span span = asked.span(from, to, MOST_DAYS);
    asked.refuseIfFaulty();
    return new Dates(within(span.first()), within(span.last()));
  }

  /**
   * The date of an address.
   *
   * @throws Refused if it is none, or beyond the calendar
   */
  static LocalDate date(String text) {
    Asked asked = new Asked();
    LocalDate date = asked.date("date", text);
    asked.refuseIfFaulty();
    return within(date);
  }

  /** The week in which a date lies, from Monday. */
  static Dates week(LocalDate date) {
    LocalDate monday = date.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    return new Dates(monday, monday.plusDays(DAYS_OF_WEEK - 1));
  }

  /** The month in which a date lies. */
  static Dates month(LocalDate date) {
    return new Dates(date.withDayOfMonth(1), date.with(TemporalAdjusters.lastDayOfMonth()));
  }

  boolean isWeek() {
    return equals(week(first));
  }

  private boolean isMonth() {
    return equals(month(first));
  }

  /** As many days before these. */
  Dates earlier() {
    return isMonth() ? month(first.minusDays(1)) : moved(-days());
  }

  /** As many days after these. */
  Dates later() {
    return isMonth() ? month(last.plusDays(1)) : moved(days());
  }

  /** Where their page is. */
  String address() {
    return isWeek() ? "/celebrants/" + first : "/celebrants/%s?to=%s".formatted(first, last);
  }

  /** As a query says them. */
  String query() {
    return "from=%s&to=%s".formatted(first, last);
  }

  private long days() {
    return ChronoUnit.DAYS.between(first, last) + 1;
  }

  private Dates moved(long days) {
    return new Dates(first.plusDays(days), last.plusDays(days));
  }

  private static LocalDate within(LocalDate date) {
    if (date.isBefore(LiturgicalCalendar.FIRST.plusDays(MARGIN_DAYS))
        || date.isAfter(LiturgicalCalendar.LAST.minusDays(MARGIN_DAYS))) {
      throw new Refused(
          new Refusal.Beyond(
              say(
                  "Celebrants are looked at from %d to %d, where the calendar reaches.",
                  LiturgicalCalendar.FIRST.getYear(), LiturgicalCalendar.LAST.getYear())));
    }
    return date;
  }
}
