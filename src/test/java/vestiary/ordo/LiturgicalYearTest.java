package vestiary.ordo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.calendar.CalendarSettings;
import vestiary.calendar.Day;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.Season;
import vestiary.calendar.SundayCycle;
import vestiary.problem.Refused;

class LiturgicalYearTest {

  private static final String ADVENT_I = "first-sunday-of-advent";

  private final LiturgicalCalendar calendar =
      LiturgicalCalendar.of(CalendarSettings.defaultsOf("general"), List.of());

  @Test
  void every_year_begins_and_ends_where_the_calendar_has_the_first_sunday_of_advent() {
    for (int number = LiturgicalYear.FIRST; number <= LiturgicalYear.LAST; number++) {
      LiturgicalYear year = new LiturgicalYear(number);
      Day last = calendar.day(year.last());

      assertEquals(ADVENT_I, calendar.day(year.first()).kept().id());
      assertEquals(ADVENT_I, calendar.day(year.last().plusDays(1)).kept().id());
      assertEquals(Season.ORDINARY, last.season());
      assertEquals(34, last.week());
    }
  }

  @ParameterizedTest
  @CsvSource({
    // UNLY 40: the Sunday that falls on or nearest to 30 November.
    "2026-11-28, 2026",
    "2026-11-29, 2027",
    "2027-01-01, 2027",
    "2027-11-27, 2027",
    "2027-11-28, 2028",
    "2028-12-02, 2028",
    "2028-12-03, 2029"
  })
  void a_date_lies_in_the_year_called_by_its_greater_part(LocalDate date, int number) {
    LiturgicalYear year = LiturgicalYear.of(date);

    assertEquals(number, year.number());
    assertTrue(year.holds(date));
    assertFalse(new LiturgicalYear(number + 1).holds(date));
  }

  @Test
  void one_year_has_one_cycle_of_sunday_readings_and_the_next_year_another() {
    // General Introduction to the Lectionary 66: a year that divides by three, as 2028, is C.
    for (LocalDate date = LocalDate.of(2026, 11, 29);
        date.isBefore(LocalDate.of(2027, 11, 28));
        date = date.plusDays(1)) {
      assertEquals(SundayCycle.B, calendar.day(date).sundayCycle());
    }
    assertNotEquals(SundayCycle.B, calendar.day(LocalDate.of(2027, 11, 28)).sundayCycle());
  }

  @Test
  void the_first_and_the_last_year_have_no_neighbour_beyond() {
    assertTrue(new LiturgicalYear(LiturgicalYear.FIRST).findBefore().isEmpty());
    assertTrue(new LiturgicalYear(LiturgicalYear.LAST).findAfter().isEmpty());
    assertEquals(2028, new LiturgicalYear(2027).findAfter().orElseThrow().number());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "1970", "2301", "27", "02027", "+2027", "-202", "2027 ", "٢٠٢٧", "year"})
  void what_is_no_year_of_the_calendar_is_refused_with_its_limits(String text) {
    Refused refused = assertThrows(Refused.class, () -> LiturgicalYear.parse(text));

    assertEquals(404, refused.refusal().status());
    assertTrue(refused.refusal().detail().contains("from 1971 to 2300"));
  }
}
