package vestiary.ordo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.calendar.CalendarSettings;
import vestiary.calendar.Celebration;
import vestiary.calendar.LiturgicalCalendar;

class YearDaysTest {

  @Test
  void every_day_of_the_year_is_there_once() {
    YearDays days = us(2027);

    assertEquals(364, days.all().size());
    for (int i = 0; i < 364; i++) {
      assertEquals(LocalDate.of(2026, 11, 29).plusDays(i), days.all().get(i).date());
    }
  }

  @ParameterizedTest
  @CsvSource({
    // UNLY 60 and Notitiae 42 (2006) 96: from Holy Week past the octave, and Joseph before it.
    "2027, annunciation, 2027-03-25, 2027-04-05",
    "2008, joseph-spouse-of-mary, 2008-03-19, 2008-03-15",
    "2008, annunciation, 2008-03-25, 2008-03-31",
    "2025, immaculate-conception, 2024-12-08, 2024-12-09"
  })
  void a_celebration_that_was_moved_is_found_from_both_its_days(
      int year, String id, LocalDate from, LocalDate to) {
    YearDays days = us(year);

    assertEquals(
        List.of(to),
        days.on(from).omitted().stream()
            .filter(o -> o.id().equals(id))
            .flatMap(o -> days.findMovedTo(o, from).stream())
            .toList());
    assertEquals(Optional.of(from), days.findMovedFrom(to));
  }

  @Test
  void what_is_left_out_is_not_taken_for_moved_when_another_year_keeps_it() {
    // 2 December 2028 ends a year that 28 November 2027 began: both have their own end of November.
    YearDays days = us(2028);

    days.all()
        .forEach(
            day ->
                day.omitted()
                    .forEach(
                        o ->
                            assertEquals(
                                o.reason().startsWith("Kept on"),
                                days.findMovedTo(o, day.date()).isPresent(),
                                day.date() + " " + o.id())));
  }

  @ParameterizedTest
  @CsvSource({
    "2026-12-07, immaculate-conception",
    "2026-12-24, nativity-of-the-lord",
    "2026-12-31, mary-mother-of-god",
    "2027-03-27, easter-vigil",
    "2027-06-23, nativity-of-john-the-baptist"
  })
  void the_evening_before_a_solemnity_on_a_weekday_is_said(LocalDate date, String celebration) {
    assertEquals(celebration, us(2027).findEve(date).map(Celebration::id).orElse(""));
  }

  @Test
  void that_a_saturday_begins_the_sunday_is_not_said() {
    YearDays days = us(2027);

    assertEquals(
        List.of(LocalDate.of(2027, 3, 27)),
        days.all().stream()
            .map(d -> d.date())
            .filter(d -> d.getDayOfWeek() == DayOfWeek.SATURDAY)
            .filter(d -> days.findEve(d).isPresent())
            .toList());
  }

  @ParameterizedTest
  @ValueSource(strings = {"2027-10-31", "2027-04-04"})
  void an_evening_that_stays_the_sunday_s_before_a_solemnity_is_said(LocalDate date) {
    // Monday 1 November 2027 and 5 April 2027 do not oblige in the United States; Notitiae 20.
    assertTrue(us(2027).isEveningKept(date));
  }

  @Test
  void other_evenings_that_stay_are_not_said() {
    YearDays days = us(2027);

    assertEquals(2, days.all().stream().filter(d -> days.isEveningKept(d.date())).count());
    assertFalse(days.isEveningKept(LocalDate.of(2027, 3, 28)), "before the Easter octave");
    assertFalse(days.isEveningKept(LocalDate.of(2027, 11, 1)), "before All Souls");
  }

  private static YearDays us(int year) {
    return YearDays.of(
        new LiturgicalYear(year),
        LiturgicalCalendar.of(CalendarSettings.defaultsOf("us"), List.of()));
  }
}
