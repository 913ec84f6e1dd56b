package vestiary.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.TemporalAdjusters;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DateRuleTest {

  @Test
  void pentecost_is_49_days_after_easter() {
    assertEquals(LocalDate.of(2026, 5, 24), date("easter+49", 2026));
  }

  @Test
  void christ_the_king_is_the_sunday_before_advent() {
    assertEquals(LocalDate.of(2026, 11, 22), date("advent-7", 2026));
  }

  @Test
  void a_date_may_step_aside_for_a_sunday() {
    assertEquals(LocalDate.of(2023, 1, 23), date("01-22-not-sunday", 2023));
    assertEquals(LocalDate.of(2024, 1, 22), date("01-22-not-sunday", 2024));
  }

  @Test
  void the_twenty_ninth_of_february_is_the_twenty_eighth_in_a_common_year() {
    YearOutline year = outline(2026);

    assertEquals(LocalDate.of(2026, 2, 28), year.date(DateRule.on(MonthDay.of(2, 29)).dayIn(year)));
  }

  /** Checked against java.time, the platform's own calendar arithmetic. */
  @Test
  void thanksgiving_is_the_fourth_thursday_of_november_in_every_year() {
    IntStream.rangeClosed(1970, 2300)
        .forEach(
            year ->
                assertEquals(
                    LocalDate.of(year, 11, 1)
                        .with(TemporalAdjusters.dayOfWeekInMonth(4, DayOfWeek.THURSDAY)),
                    date("fourth-thursday-of-november", year)));
  }

  /** UNLY 40: the fourth Sunday before Christmas; checked against java.time. */
  @Test
  void advent_begins_on_the_fourth_sunday_before_christmas_in_every_year() {
    IntStream.rangeClosed(1970, 2300)
        .forEach(
            year ->
                assertEquals(
                    LocalDate.of(year, 12, 25)
                        .with(TemporalAdjusters.previous(DayOfWeek.SUNDAY))
                        .minusWeeks(3),
                    date("advent+0", year)));
  }

  @Test
  void a_rule_that_says_nothing_is_refused() {
    assertThrows(IllegalArgumentException.class, () -> DateRule.parse("sometime-in-may"));
    assertThrows(IllegalArgumentException.class, () -> DateRule.parse("05-01-or-so"));
  }

  private static LocalDate date(String rule, int year) {
    YearOutline outline = outline(year);
    return outline.date(DateRule.parse(rule).dayIn(outline));
  }

  private static YearOutline outline(int year) {
    return YearOutline.of(
        year, OfferedCalendars.norms("general"), CalendarSettings.defaultsOf("general"));
  }
}
