package vestiary.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import vestiary.calendar.Day;
import vestiary.calendar.Rank;

/** To which day an evening belongs, in all years the calendar covers. */
class EveningsTest {

  /** UNLY 3, 11, 13: feasts, memorials and weekdays keep within their day. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void only_a_sunday_or_a_solemnity_begins_the_evening_before(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2299) int year) {
    LocalDate first = LocalDate.of(year, 1, 1);
    List<Day> days = Churches.days(church, first, first.plusYears(1));
    for (int i = 1; i < days.size(); i++) {
      Day next = days.get(i);
      boolean begins = isSunday(next) || next.kept().rank() == Rank.SOLEMNITY;
      if (!begins) assertFalse(days.get(i - 1).evening().tomorrow(), next::toString);
    }
  }

  /** UNLY 59, 61: Christmas stands before any Sunday of Advent. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void the_evening_of_24_december_is_christmas(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    assertTrue(day(church, LocalDate.of(year, 12, 24)).evening().tomorrow());
  }

  /** Archdiocese of Los Angeles, 'Liturgical Year and Calendar' (2025); UNLY 59, 61. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void a_sunday_of_advent_keeps_its_evening_before_the_immaculate_conception(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    Day eve = day(church, LocalDate.of(year, 12, 7));
    if (isSunday(eve)) assertFalse(eve.evening().tomorrow());
  }

  /** UNLY 19, 21; Paschale solemnitatis 78. */
  @Property(generation = GenerationMode.EXHAUSTIVE)
  void no_evening_of_the_triduum_is_anticipated_but_the_vigil(
      @ForAll(supplier = Churches.class) ChurchOfFact church,
      @ForAll @IntRange(min = 1970, max = 2300) int year) {
    LocalDate easter = Churches.dayOf("easter-sunday", church, year).date();

    List<Boolean> evenings =
        Churches.days(church, easter.minusDays(3), easter).stream()
            .map(day -> day.evening().tomorrow())
            .toList();

    assertEquals(List.of(false, false, true, false), evenings);
  }

  private static Day day(ChurchOfFact church, LocalDate date) {
    return church.liturgicalCalendar().day(date);
  }

  private static boolean isSunday(Day day) {
    return day.date().getDayOfWeek() == DayOfWeek.SUNDAY;
  }
}
