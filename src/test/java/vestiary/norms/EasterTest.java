package vestiary.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;

import de.focus_shift.jollyday.core.parser.functions.CalculateEasterSunday;
import java.time.LocalDate;
import java.time.Year;
import java.time.chrono.IsoChronology;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

  /** Articles 'Easter is a Movable Feast' and 'Happy Early Easter'. */
  @ParameterizedTest(name = "Easter on {0} {1} in {2} and no other year of {3}")
  @CsvSource({
    "3, 22, 1818 2285, 1800-2299",
    "3, 23, 1913 2008 2160, 1900-2160",
    "4, 25, 1943 2038 2190, 1900-2190"
  })
  void easter_is_rarely_at_its_bounds(int month, int day, String years, String span) {
    int first = Integer.parseInt(span.substring(0, 4));
    int last = Integer.parseInt(span.substring(5));

    String found =
        IntStream.rangeClosed(first, last)
            .filter(year -> EasterOfTheCalendar.in(year).equals(LocalDate.of(year, month, day)))
            .mapToObj(String::valueOf)
            .collect(Collectors.joining(" "));

    assertEquals(years, found);
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
