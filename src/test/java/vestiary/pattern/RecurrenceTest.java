package vestiary.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The examples of RFC 5545 (September 2009) for rules that name days: start, rule and the dates
 * that the standard prints. An end that it prints as a date with time is the last such date here;
 * where the standard goes on with dots, so would the rule.
 */
class RecurrenceTest {

  /** Source: RFC 5545, 3.8.5.3, "Daily ...", "Every other day", "Every 10 days". */
  @ParameterizedTest
  @CsvSource(
      delimiter = '/',
      textBlock =
          """
          1997-09-02 / FREQ=DAILY;COUNT=10            / 1997: 9-2 9-3 9-4 9-5 9-6 9-7 9-8 9-9 9-10 9-11
          1997-09-02 / FREQ=DAILY;INTERVAL=2          / 1997: 9-2 9-4 9-6 9-8 9-10 9-12 9-14 9-16 9-18 9-20 9-22 9-24 9-26 9-28 9-30 10-2 10-4
          1997-09-02 / FREQ=DAILY;INTERVAL=10;COUNT=5 / 1997: 9-2 9-12 9-22 10-2 10-12
          """)
  void daily_rules_name_the_days_that_the_standard_prints(
      LocalDate start, String rule, String printed) {
    assertPrinted(start, rule, printed);
  }

  /** Source: RFC 5545, 3.8.5.3, "Daily until December 24, 1997", "Every day in January". */
  @Test
  void an_end_and_a_month_bound_daily_rules() {
    LocalDate start = LocalDate.of(1997, 9, 2);

    assertEquals(
        start.datesUntil(LocalDate.of(1997, 12, 24)).toList(),
        all("FREQ=DAILY;UNTIL=19971223", start));
    assertEquals(
        Stream.of(1998, 1999, 2000)
            .flatMap(y -> LocalDate.of(y, 1, 1).datesUntil(LocalDate.of(y, 2, 1)))
            .toList(),
        all("FREQ=DAILY;UNTIL=20000131;BYMONTH=1", LocalDate.of(1998, 1, 1)));
    assertEquals(
        all("FREQ=DAILY;UNTIL=20000131;BYMONTH=1", LocalDate.of(1998, 1, 1)),
        all(
            "FREQ=YEARLY;UNTIL=20000131;BYMONTH=1;BYDAY=SU,MO,TU,WE,TH,FR,SA",
            LocalDate.of(1998, 1, 1)));
  }

  /**
   * Source: RFC 5545, 3.8.5.3, "Weekly ...", "Every other week ...", and the days that WKST
   * changes.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '/',
      textBlock =
          """
          1997-09-02 / FREQ=WEEKLY;COUNT=10                                          / 1997: 9-2 9-9 9-16 9-23 9-30 10-7 10-14 10-21 10-28 11-4
          1997-09-02 / FREQ=WEEKLY;UNTIL=19971223                                    / 1997: 9-2 9-9 9-16 9-23 9-30 10-7 10-14 10-21 10-28 11-4 11-11 11-18 11-25 12-2 12-9 12-16 12-23
          1997-09-02 / FREQ=WEEKLY;INTERVAL=2;WKST=SU                                / 1997: 9-2 9-16 9-30 10-14 10-28 11-11 11-25 12-9 12-23 1998: 1-6 1-20 2-3 2-17
          1997-09-02 / FREQ=WEEKLY;COUNT=10;WKST=SU;BYDAY=TU,TH                      / 1997: 9-2 9-4 9-9 9-11 9-16 9-18 9-23 9-25 9-30 10-2
          1997-09-02 / FREQ=WEEKLY;UNTIL=19971006;WKST=SU;BYDAY=TU,TH                / 1997: 9-2 9-4 9-9 9-11 9-16 9-18 9-23 9-25 9-30 10-2
          1997-09-01 / FREQ=WEEKLY;INTERVAL=2;UNTIL=19971223;WKST=SU;BYDAY=MO,WE,FR  / 1997: 9-1 9-3 9-5 9-15 9-17 9-19 9-29 10-1 10-3 10-13 10-15 10-17 10-27 10-29 10-31 11-10 11-12 11-14 11-24 11-26 11-28 12-8 12-10 12-12 12-22
          1997-09-02 / FREQ=WEEKLY;INTERVAL=2;COUNT=8;WKST=SU;BYDAY=TU,TH            / 1997: 9-2 9-4 9-16 9-18 9-30 10-2 10-14 10-16
          1997-08-05 / FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=MO            / 1997: 8-5 8-10 8-19 8-24
          1997-08-05 / FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=SU            / 1997: 8-5 8-17 8-19 8-31
          """)
  void weekly_rules_name_the_days_that_the_standard_prints(
      LocalDate start, String rule, String printed) {
    assertPrinted(start, rule, printed);
  }

  /**
   * Source: RFC 5545, 3.8.5.3, "Monthly ...", "Every other month ...", "Every 18 months ...",
   * "Every Tuesday, every other month", "Every Friday the 13th", "The first Saturday that follows
   * the first Sunday", "The third instance ...", "The second-to-last weekday", and the invalid date
   * ignored.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '/',
      textBlock =
          """
          1997-09-05 / FREQ=MONTHLY;COUNT=10;BYDAY=1FR                                 / 1997: 9-5 10-3 11-7 12-5 1998: 1-2 2-6 3-6 4-3 5-1 6-5
          1997-09-05 / FREQ=MONTHLY;UNTIL=19971223;BYDAY=1FR                           / 1997: 9-5 10-3 11-7 12-5
          1997-09-07 / FREQ=MONTHLY;INTERVAL=2;COUNT=10;BYDAY=1SU,-1SU                 / 1997: 9-7 9-28 11-2 11-30 1998: 1-4 1-25 3-1 3-29 5-3 5-31
          1997-09-22 / FREQ=MONTHLY;COUNT=6;BYDAY=-2MO                                 / 1997: 9-22 10-20 11-17 12-22 1998: 1-19 2-16
          1997-09-28 / FREQ=MONTHLY;BYMONTHDAY=-3                                      / 1997: 9-28 10-29 11-28 12-29 1998: 1-29 2-26
          1997-09-02 / FREQ=MONTHLY;COUNT=10;BYMONTHDAY=2,15                           / 1997: 9-2 9-15 10-2 10-15 11-2 11-15 12-2 12-15 1998: 1-2 1-15
          1997-09-30 / FREQ=MONTHLY;COUNT=10;BYMONTHDAY=1,-1                           / 1997: 9-30 10-1 10-31 11-1 11-30 12-1 12-31 1998: 1-1 1-31 2-1
          1997-09-10 / FREQ=MONTHLY;INTERVAL=18;COUNT=10;BYMONTHDAY=10,11,12,13,14,15  / 1997: 9-10 9-11 9-12 9-13 9-14 9-15 1999: 3-10 3-11 3-12 3-13
          1997-09-02 / FREQ=MONTHLY;INTERVAL=2;BYDAY=TU                                / 1997: 9-2 9-9 9-16 9-23 9-30 11-4 11-11 11-18 11-25 1998: 1-6 1-13 1-20 1-27 3-3 3-10 3-17 3-24 3-31
          1997-09-02 / FREQ=MONTHLY;BYDAY=FR;BYMONTHDAY=13                             / 1998: 2-13 3-13 11-13 1999: 8-13 2000: 10-13
          1997-09-13 / FREQ=MONTHLY;BYDAY=SA;BYMONTHDAY=7,8,9,10,11,12,13              / 1997: 9-13 10-11 11-8 12-13 1998: 1-10 2-7 3-7 4-11 5-9 6-13
          1997-09-04 / FREQ=MONTHLY;COUNT=3;BYDAY=TU,WE,TH;BYSETPOS=3                  / 1997: 9-4 10-7 11-6
          1997-09-29 / FREQ=MONTHLY;BYDAY=MO,TU,WE,TH,FR;BYSETPOS=-2                   / 1997: 9-29 10-30 11-27 12-30 1998: 1-29 2-26 3-30
          2007-01-15 / FREQ=MONTHLY;BYMONTHDAY=15,30;COUNT=5                           / 2007: 1-15 1-30 2-15 3-15 3-30
          """)
  void monthly_rules_name_the_days_that_the_standard_prints(
      LocalDate start, String rule, String printed) {
    assertPrinted(start, rule, printed);
  }

  /**
   * Source: RFC 5545, 3.8.5.3, "Yearly ...", "Every other year ...", "Every third year ...", "Every
   * 20th Monday", "Monday of week number 20", "Every Thursday ...", "U.S. Presidential Election
   * day".
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '/',
      textBlock =
          """
          1997-06-10 / FREQ=YEARLY;COUNT=10;BYMONTH=6,7                                       / 1997: 6-10 7-10 1998: 6-10 7-10 1999: 6-10 7-10 2000: 6-10 7-10 2001: 6-10 7-10
          1997-03-10 / FREQ=YEARLY;INTERVAL=2;COUNT=10;BYMONTH=1,2,3                          / 1997: 3-10 1999: 1-10 2-10 3-10 2001: 1-10 2-10 3-10 2003: 1-10 2-10 3-10
          1997-01-01 / FREQ=YEARLY;INTERVAL=3;COUNT=10;BYYEARDAY=1,100,200                    / 1997: 1-1 4-10 7-19 2000: 1-1 4-9 7-18 2003: 1-1 4-10 7-19 2006: 1-1
          1997-05-19 / FREQ=YEARLY;BYDAY=20MO                                                 / 1997: 5-19 1998: 5-18 1999: 5-17
          1997-05-12 / FREQ=YEARLY;BYWEEKNO=20;BYDAY=MO                                       / 1997: 5-12 1998: 5-11 1999: 5-17
          1997-03-13 / FREQ=YEARLY;BYMONTH=3;BYDAY=TH                                         / 1997: 3-13 3-20 3-27 1998: 3-5 3-12 3-19 3-26 1999: 3-4 3-11 3-18 3-25
          1997-06-05 / FREQ=YEARLY;BYDAY=TH;BYMONTH=6,7,8                                     / 1997: 6-5 6-12 6-19 6-26 7-3 7-10 7-17 7-24 7-31 8-7 8-14 8-21 8-28
          1996-11-05 / FREQ=YEARLY;INTERVAL=4;BYMONTH=11;BYDAY=TU;BYMONTHDAY=2,3,4,5,6,7,8    / 1996: 11-5 2000: 11-7 2004: 11-2
          """)
  void yearly_rules_name_the_days_that_the_standard_prints(
      LocalDate start, String rule, String printed) {
    assertPrinted(start, rule, printed);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30",
        "FREQ=DAILY;BYMONTH=2;BYMONTHDAY=30",
        "FREQ=MONTHLY;BYDAY=6TH",
        "FREQ=DAILY;UNTIL=20200101"
      })
  void a_rule_that_never_happens_names_no_date_and_says_so_at_once(String rule) {
    LocalDate start = LocalDate.of(2024, 1, 1);
    Recurrence recurrence = Recurrence.parse(rule);

    assertTimeout(
        Duration.ofSeconds(2),
        () -> {
          assertFalse(recurrence.hasDate(start));
          assertEquals(List.of(), recurrence.dates(start, start, start.plusYears(3)));
          assertEquals(
              List.of(), recurrence.dates(start, start.plusYears(270), start.plusYears(273)));
        });
  }

  @Test
  void a_rule_that_happens_seldom_has_a_date_nevertheless() {
    Recurrence leapDaySunday = Recurrence.parse("FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=29;BYDAY=SU");

    assertTrue(leapDaySunday.hasDate(LocalDate.of(2024, 1, 1)));
    assertEquals(
        List.of(LocalDate.of(2032, 2, 29), LocalDate.of(2060, 2, 29)),
        leapDaySunday.dates(
            LocalDate.of(2024, 1, 1), LocalDate.of(2024, 1, 1), LocalDate.of(2087, 1, 1)));
  }

  @Test
  void a_count_that_is_used_up_leaves_no_date_far_ahead() {
    LocalDate start = LocalDate.of(2024, 1, 1);
    Recurrence novena = Recurrence.parse("FREQ=DAILY;COUNT=9");

    assertEquals(9, novena.dates(start, start, start.plusYears(1)).size());
    assertEquals(List.of(), novena.dates(start, start.plusYears(1), start.plusYears(2)));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 5})
  void weeks_far_ahead_are_counted_from_the_start(int interval) {
    LocalDate start = LocalDate.of(1970, 1, 4);
    LocalDate first = LocalDate.of(2299, 1, 1);
    Recurrence sundays = Recurrence.parse("FREQ=WEEKLY;BYDAY=SU;INTERVAL=" + interval);

    List<LocalDate> dates = sundays.dates(start, first, first.plusYears(2).minusDays(1));

    assertEquals(
        first
            .datesUntil(first.plusYears(2))
            .filter(day -> day.getDayOfWeek() == DayOfWeek.SUNDAY)
            .filter(day -> ChronoUnit.WEEKS.between(start, day) % interval == 0)
            .toList(),
        dates);
  }

  @Test
  void fifty_years_of_days_are_all_named() {
    LocalDate start = LocalDate.of(1970, 1, 1);

    List<LocalDate> dates =
        Recurrence.parse("FREQ=DAILY").dates(start, start, start.plusYears(50).minusDays(1));

    assertEquals(start.datesUntil(start.plusYears(50)).toList(), dates);
  }

  @Test
  void the_first_and_the_last_day_asked_for_are_included() {
    LocalDate monday = LocalDate.of(2026, 11, 30);

    List<LocalDate> dates =
        Recurrence.parse("FREQ=WEEKLY;BYDAY=MO")
            .dates(LocalDate.of(2024, 1, 1), monday, monday.plusWeeks(1));

    assertEquals(List.of(monday, monday.plusWeeks(1)), dates);
  }

  @Test
  void nothing_is_named_before_the_rule_begins_to_count() {
    LocalDate start = LocalDate.of(2026, 11, 30);

    List<LocalDate> dates =
        Recurrence.parse("FREQ=DAILY").dates(start, start.minusDays(9), start.plusDays(1));

    assertEquals(List.of(start, start.plusDays(1)), dates);
  }

  @Test
  void a_rule_is_written_in_capital_letters() {
    assertEquals("FREQ=WEEKLY;BYDAY=SU", Recurrence.parse(" freq=weekly;byday=su ").toString());
  }

  /** Source of the grammar: RFC 5545, 3.3.10. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "every Sunday",
        "",
        "FREQ=FORTNIGHTLY",
        "BYDAY=SU",
        "RRULE:FREQ=DAILY",
        "FREQ=WEEKLY;BYDAY=1SU",
        "FREQ=WEEKLY;BYMONTHDAY=1",
        "FREQ=DAILY;INTERVAL=0",
        "FREQ=DAILY;COUNT=3;UNTIL=20271231"
      })
  void what_is_no_rule_by_the_letter_of_the_standard_is_refused(String rule) {
    assertRefused(rule, "by RFC 5545");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "FREQ=HOURLY",
        "FREQ=MINUTELY",
        "FREQ=SECONDLY",
        "FREQ=DAILY;BYHOUR=9",
        "FREQ=DAILY;BYMINUTE=1",
        "FREQ=DAILY;BYSECOND=1"
      })
  void a_rule_that_says_a_time_of_day_is_refused(String rule) {
    assertRefused(rule, "daily or rarer");
  }

  @ParameterizedTest
  @ValueSource(strings = {"FREQ=DAILY;UNTIL=20271231T000000Z", "FREQ=DAILY;UNTIL=20271231T000000"})
  void an_end_with_a_time_is_refused(String rule) {
    assertRefused(rule, "UNTIL=20271231.");
  }

  private static void assertRefused(String rule, String wanted) {
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> Recurrence.parse(rule));

    assertTrue(refused.getMessage().contains(wanted), refused.getMessage());
  }

  /** The dates up to the last printed, or all if the rule has a count or an end. */
  private static void assertPrinted(LocalDate start, String rule, String printed) {
    List<LocalDate> expected = dates(printed);
    boolean ends = rule.contains("COUNT") || rule.contains("UNTIL");

    List<LocalDate> found =
        ends
            ? all(rule, start)
            : Recurrence.parse(rule).dates(start, start, expected.get(expected.size() - 1));

    assertEquals(expected, found);
  }

  private static List<LocalDate> all(String rule, LocalDate start) {
    return Recurrence.parse(rule).dates(start, start, start.plusYears(30));
  }

  /** Such as "1997: 12-9 12-23 1998: 1-6". */
  private static List<LocalDate> dates(String printed) {
    return Stream.of(printed.strip().split(" (?=\\d{4}:)"))
        .flatMap(
            year ->
                Stream.of(year.substring(6).split(" "))
                    .map(day -> date(year.substring(0, 4), day.split("-"))))
        .toList();
  }

  private static LocalDate date(String year, String[] monthAndDay) {
    return LocalDate.of(
        Integer.parseInt(year), Integer.parseInt(monthAndDay[0]), Integer.parseInt(monthAndDay[1]));
  }
}
