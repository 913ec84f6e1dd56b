package vestiary.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import vestiary.calendar.CalendarSettings;
import vestiary.calendar.LiturgicalCalendar;

/** Days that patterns take from the calendar, against published lists of them. */
class LiturgicalDaysTest {

  private static final LiturgicalCalendar US = calendar("us");

  /**
   * Source: United States Conference of Catholic Bishops, Complementary Norms, canon 1246 (1991): 1
   * January, Ascension (Sunday where the province has moved it), 15 August, 1 November, 8 December,
   * 25 December; the precept falls away where 1 January, 15 August or 1 November is a Saturday or a
   * Monday. In 2027, 15 August is a Sunday and 1 November a Monday.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '/',
      textBlock =
          """
          2026 / 2026-01-01 2026-12-08 2026-12-25
          2027 / 2027-01-01 2027-12-08 2027-12-25
          2025 / 2025-01-01 2025-08-15 2025-12-08 2025-12-25
          2028 / 2028-08-15 2028-11-01 2028-12-08 2028-12-25
          """)
  void holy_days_of_the_united_states_are_those_of_the_decree(int year, String dates) {
    assertEquals(days(dates), of(LiturgicalDays.HOLY_DAYS, year));
  }

  @Test
  void the_evening_before_the_immaculate_conception_is_an_eve_and_a_sunday_is_none() {
    List<LocalDate> eves = of(LiturgicalDays.HOLY_DAY_EVES, 2026);

    assertEquals(days("2026-12-07 2026-12-24 2026-12-31"), eves);
  }

  /** Source: UNLY 59 with the tables of the Roman Missal: Easter is on 5 April 2026. */
  @Test
  void ash_wednesday_and_all_souls_move_as_the_calendar_does() {
    assertEquals(days("2026-02-18"), of(LiturgicalDays.ASH_WEDNESDAY, 2026));
    assertEquals(days("2027-02-10"), of(LiturgicalDays.ASH_WEDNESDAY, 2027));
    assertEquals(days("2026-11-02"), of(LiturgicalDays.ALL_SOULS, 2026));
  }

  @Test
  void sundays_and_holy_days_of_a_year_are_each_named_once() {
    List<LocalDate> both = of(LiturgicalDays.SUNDAYS_AND_HOLY_DAYS, 2026);

    assertEquals(52 + 3, both.size());
    assertEquals(both, both.stream().distinct().sorted().toList());
  }

  @Test
  void solemnities_leave_sundays_to_their_own_masses() {
    List<LocalDate> found = of(LiturgicalDays.SOLEMNITIES, 2026);

    assertEquals(
        days("2026-03-19 2026-03-25 2026-06-12 2026-06-24 2026-06-29"),
        found.stream()
            .filter(date -> date.getMonthValue() == 3 || date.getMonthValue() == 6)
            .toList());
  }

  static LiturgicalCalendar calendar(String id) {
    return LiturgicalCalendar.of(CalendarSettings.defaultsOf(id), List.of());
  }

  private static List<LocalDate> of(LiturgicalDays days, int year) {
    LocalDate first = LocalDate.of(year, 1, 1);
    return days.dates(US, first, first, LocalDate.of(year, 12, 31));
  }

  private static List<LocalDate> days(String dates) {
    return Stream.of(dates.strip().split(" ")).map(LocalDate::parse).toList();
  }
}
