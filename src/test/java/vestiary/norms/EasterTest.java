package vestiary.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;

import de.focus_shift.jollyday.core.parser.functions.CalculateEasterSunday;
import java.time.LocalDate;
import java.time.Year;
import java.time.chrono.IsoChronology;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import vestiary.calendar.CalendarSettings;
import vestiary.calendar.EasterOfTheCalendar;
import vestiary.calendar.LiturgicalCalendar;

/**
 * The date of Easter against two others: a general-purpose holiday library, and the anonymous
 * Gregorian algorithm as J. Meeus prints it (Astronomical Algorithms, chapter 8), written here
 * anew.
 */
class EasterTest {

  @Test
  void easter_agrees_with_a_holiday_library_from_1583_to_2499() {
    IntStream.rangeClosed(1583, 2499)
        .forEach(
            year ->
                assertEquals(
                    new CalculateEasterSunday(Year.of(year)).apply(IsoChronology.INSTANCE),
                    EasterOfTheCalendar.in(year)));
  }

  @Test
  void easter_agrees_with_the_anonymous_gregorian_algorithm_from_1583_to_9999() {
    IntStream.rangeClosed(1583, 9999)
        .forEach(year -> assertEquals(meeus(year), EasterOfTheCalendar.in(year)));
  }

  @Test
  void the_calendar_keeps_easter_sunday_on_that_day_in_every_year_it_covers() {
    LiturgicalCalendar calendar =
        LiturgicalCalendar.of(CalendarSettings.defaultsOf("general"), List.of());

    IntStream.rangeClosed(1970, 2300)
        .forEach(year -> assertEquals("easter-sunday", calendar.day(meeus(year)).kept().id()));
  }

  private static LocalDate meeus(int year) {
    int a = year % 19;
    int b = year / 100;
    int c = year % 100;
    int d = b / 4;
    int e = b % 4;
    int f = (b + 8) / 25;
    int g = (b - f + 1) / 3;
    int h = (19 * a + b - d - g + 15) % 30;
    int i = c / 4;
    int k = c % 4;
    int l = (32 + 2 * e + 2 * i - h - k) % 7;
    int m = (a + 11 * h + 22 * l) / 451;
    int n = h + l - 7 * m + 114;
    return LocalDate.of(year, n / 31, n % 31 + 1);
  }
}
