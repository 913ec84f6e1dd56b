package vestiary.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.Season;

class MassPatternTest {

  private static final LiturgicalCalendar US = LiturgicalDaysTest.calendar("us");
  private static final LocalDate START = LocalDate.of(2026, 1, 1);
  private static final LocalDate END = LocalDate.of(2027, 12, 31);
  private static final List<SchoolTerm> NO_TERMS = List.of();

  /** Easter 2026 is on 5 April, 2027 on 28 March. Source: UNLY 19 for the days of the Triduum. */
  @Test
  void daily_masses_stop_on_holy_thursday_and_begin_again_on_easter_sunday() {
    MassPattern daily =
        limited("FREQ=DAILY", new Limits(Set.of(), Set.of(), true, false, SchoolTime.ALWAYS));

    List<LocalDate> left = missing(daily);

    assertEquals(
        List.of(
            LocalDate.of(2026, 4, 2),
            LocalDate.of(2026, 4, 3),
            LocalDate.of(2026, 4, 4),
            LocalDate.of(2027, 3, 25),
            LocalDate.of(2027, 3, 26),
            LocalDate.of(2027, 3, 27)),
        left);
  }

  /** Good Friday 2026 is 3 April, the first Friday of its month. */
  @Test
  void first_fridays_leave_good_friday_out() {
    MassPattern fridays =
        limited(
            "FREQ=MONTHLY;BYDAY=1FR",
            new Limits(Set.of(), Set.of(), true, false, SchoolTime.ALWAYS));

    List<LocalDate> found = fridays.dates(US, NO_TERMS, START, LocalDate.of(2026, 6, 30));

    assertEquals(
        List.of(
            LocalDate.of(2026, 1, 2),
            LocalDate.of(2026, 2, 6),
            LocalDate.of(2026, 3, 6),
            LocalDate.of(2026, 5, 1),
            LocalDate.of(2026, 6, 5)),
        found);
  }

  /** Advent 2026 begins on Sunday 29 November. Source: UNLY 40: up to 24 December before None. */
  @Test
  void masses_at_dawn_are_said_on_the_weekdays_of_advent_alone() {
    MassPattern dawn =
        limited(
            "FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR,SA",
            new Limits(Set.of(Season.ADVENT), Set.of(), false, false, SchoolTime.ALWAYS));

    List<LocalDate> found = dawn.dates(US, NO_TERMS, START, LocalDate.of(2026, 12, 31));

    assertEquals(LocalDate.of(2026, 11, 30), found.get(0));
    assertEquals(LocalDate.of(2026, 12, 24), found.get(found.size() - 1));
    assertEquals(22, found.size());
  }

  @Test
  void the_usual_tuesday_gives_way_on_the_immaculate_conception() {
    MassPattern tuesdays =
        limited(
            "FREQ=WEEKLY;BYDAY=TU", new Limits(Set.of(), Set.of(), false, true, SchoolTime.ALWAYS));

    List<LocalDate> found =
        tuesdays.dates(US, NO_TERMS, LocalDate.of(2026, 12, 1), LocalDate.of(2026, 12, 31));

    assertEquals(
        List.of(
            LocalDate.of(2026, 12, 1),
            LocalDate.of(2026, 12, 15),
            LocalDate.of(2026, 12, 22),
            LocalDate.of(2026, 12, 29)),
        found);
  }

  @Test
  void july_and_august_have_their_own_hours() {
    MassPattern summer =
        limited(
            "FREQ=WEEKLY;BYDAY=SU",
            new Limits(
                Set.of(), Set.of(Month.JULY, Month.AUGUST), false, false, SchoolTime.ALWAYS));

    List<LocalDate> found = summer.dates(US, NO_TERMS, START, LocalDate.of(2026, 12, 31));

    assertEquals(LocalDate.of(2026, 7, 5), found.get(0));
    assertEquals(LocalDate.of(2026, 8, 30), found.get(found.size() - 1));
    assertEquals(9, found.size());
  }

  @ParameterizedTest
  @EnumSource(
      value = SchoolTime.class,
      names = {"IN_TERM", "IN_HOLIDAYS"})
  void terms_and_holidays_share_the_days_between_them(SchoolTime time) {
    List<SchoolTerm> terms =
        List.of(
            new SchoolTerm("Spring", LocalDate.of(2026, 1, 7), LocalDate.of(2026, 3, 27)),
            new SchoolTerm("Summer", LocalDate.of(2026, 4, 13), LocalDate.of(2026, 6, 12)));
    MassPattern wednesdays =
        limited("FREQ=WEEKLY;BYDAY=WE", new Limits(Set.of(), Set.of(), false, false, time));

    List<LocalDate> found = wednesdays.dates(US, terms, START, END);

    boolean inTerm = time == SchoolTime.IN_TERM;
    assertTrue(found.stream().allMatch(d -> terms.stream().anyMatch(t -> t.contains(d)) == inTerm));
    assertEquals(inTerm, found.contains(LocalDate.of(2026, 1, 7)));
    assertEquals(inTerm, found.contains(LocalDate.of(2026, 6, 10)));
    assertEquals(!inTerm, found.contains(LocalDate.of(2026, 4, 8)));
  }

  @Test
  void from_until_and_left_out_days_bound_a_pattern_both_ends_included() {
    MassPattern sundays =
        new MassPattern(
            Recurrence.parse("FREQ=WEEKLY;BYDAY=SU"),
            LocalDate.of(2026, 11, 29),
            LocalDate.of(2026, 12, 20),
            Limits.NONE,
            Set.of(LocalDate.of(2026, 12, 13)));

    assertEquals(
        List.of(LocalDate.of(2026, 11, 29), LocalDate.of(2026, 12, 6), LocalDate.of(2026, 12, 20)),
        sundays.dates(US, NO_TERMS, START, END));
  }

  /**
   * Whatever the limits: a limit only ever takes dates away, and asking in parts changes nothing.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "FREQ=DAILY",
        "FREQ=WEEKLY;INTERVAL=2;BYDAY=SA",
        "FREQ=MONTHLY;BYDAY=1FR,-1SU",
        "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=29"
      })
  void a_limit_takes_dates_away_and_asking_month_by_month_finds_the_same(String rule) {
    List<LocalDate> all =
        MassPattern.of(Recurrence.parse(rule), START).dates(US, NO_TERMS, START, END);
    for (Season season : Season.values()) {
      for (boolean flag : List.of(true, false)) {
        MassPattern limited =
            limited(
                rule,
                new Limits(
                    Set.of(season),
                    Set.of(Month.MARCH, Month.DECEMBER),
                    flag,
                    !flag,
                    SchoolTime.ALWAYS));

        List<LocalDate> found = limited.dates(US, NO_TERMS, START, END);

        assertTrue(all.containsAll(found));
        List<LocalDate> parts = new ArrayList<>();
        for (LocalDate month = START; month.isBefore(END); month = month.plusMonths(1)) {
          parts.addAll(limited.dates(US, NO_TERMS, month, month.plusMonths(1).minusDays(1)));
        }
        assertEquals(found, parts);
      }
    }
  }

  @Test
  void days_that_never_come_together_are_known_at_once() {
    MassPattern never =
        limited(
            "FREQ=WEEKLY;BYDAY=SU",
            new Limits(Set.of(Season.ADVENT), Set.of(Month.JULY), false, false, SchoolTime.ALWAYS));

    assertTimeout(Duration.ofSeconds(2), () -> assertFalse(never.hasDate(US, NO_TERMS)));
    assertTrue(MassPattern.of(LiturgicalDays.HOLY_DAYS, START).hasDate(US, NO_TERMS));
  }

  @Test
  void the_ends_of_the_calendar_are_the_ends_of_every_pattern() {
    MassPattern daily = MassPattern.of(Recurrence.parse("FREQ=DAILY"), LocalDate.of(1, 1, 1));

    assertEquals(
        LiturgicalCalendar.FIRST,
        daily.dates(US, NO_TERMS, LocalDate.MIN, LocalDate.of(1970, 1, 9)).get(0));
    assertEquals(
        List.of(LocalDate.of(2300, 12, 30)),
        daily.dates(US, NO_TERMS, LocalDate.of(2300, 12, 30), LocalDate.MAX));
    assertFalse(
        MassPattern.of(LiturgicalDays.HOLY_DAYS, LocalDate.of(2301, 1, 1)).hasDate(US, NO_TERMS));
  }

  /**
   * The Sundays on either side of both clock changes. Source of the changes: Energy Policy Act of
   * 2005, section 110 (second Sunday of March, first of November); Directive 2000/84/EC and the
   * Summer Time Order 2002 (last Sunday of March and of October, at 01:00 UTC).
   */
  @ParameterizedTest
  @CsvSource({
    "America/Chicago, 2027-03-07, 16:30",
    "America/Chicago, 2027-03-14, 15:30",
    "America/Chicago, 2027-10-31, 15:30",
    "America/Chicago, 2027-11-07, 16:30",
    "Europe/London,   2027-03-21, 10:30",
    "Europe/London,   2027-03-28, 09:30",
    "Europe/London,   2027-10-24, 09:30",
    "Europe/London,   2027-10-31, 10:30",
    "Europe/Madrid,   2027-03-21, 09:30",
    "Europe/Madrid,   2027-03-28, 08:30",
    "Europe/Madrid,   2027-10-24, 08:30",
    "Europe/Madrid,   2027-10-31, 09:30"
  })
  void half_past_ten_stays_half_past_ten_when_the_clocks_change(
      ZoneId zone, LocalDate sunday, LocalTime utc) {
    assertEquals(DayOfWeek.SUNDAY, sunday.getDayOfWeek());
    assertEquals(
        sunday.atTime(utc).atZone(ZoneId.of("UTC")).toInstant(),
        new LocalHour(LocalTime.of(10, 30), zone).on(sunday));
  }

  private static MassPattern limited(String rule, Limits limits) {
    return new MassPattern(Recurrence.parse(rule), START, LocalDate.MAX, limits, Set.of());
  }

  private static List<LocalDate> missing(MassPattern pattern) {
    List<LocalDate> found = pattern.dates(US, NO_TERMS, START, END);
    return START.datesUntil(END.plusDays(1)).filter(date -> !found.contains(date)).toList();
  }
}
