package vestiary.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A solemnity of the week on the Sunday beside it. Source: UNLY 58. */
class PastoralTransferTest {

  private static final String DEDICATION = "dedication-of-this-church";

  @Test
  void a_dedication_on_a_wednesday_goes_to_the_sunday_that_is_asked_for() {
    assertEquals(LocalDate.of(2025, 10, 19), kept(10, 22, SundayBeside.BEFORE));
    assertEquals(LocalDate.of(2025, 10, 26), kept(10, 22, SundayBeside.AFTER));
    assertEquals(LocalDate.of(2025, 10, 19), kept(10, 22, SundayBeside.NEAREST));
    assertEquals(LocalDate.of(2025, 10, 26), kept(10, 23, SundayBeside.NEAREST));
  }

  @Test
  void the_weekday_says_where_it_went_and_the_sunday_whence_it_came() {
    LiturgicalCalendar church = church(10, 22, SundayBeside.BEFORE);
    Day wednesday = church.day(LocalDate.of(2025, 10, 22));
    Day sunday = church.day(LocalDate.of(2025, 10, 19));

    assertEquals(Rank.FERIA, wednesday.kept().rank());
    assertEquals(
        "Kept on Sunday 19 October 2025 instead, because this church keeps it on the Sunday for the"
            + " good of the faithful.",
        wednesday.omitted().get(0).reason());
    assertEquals("UNLY 58", sunday.transfers().get(0).source());
    assertEquals("twenty-ninth-sunday-in-ordinary-time", sunday.omitted().get(0).id());
    assertTrue(sunday.obligation());
  }

  /** No Sunday of Advent, Lent or Easter is given up (UNLY 5). */
  @Test
  void it_stays_on_its_day_where_the_sundays_are_of_lent() {
    assertEquals(LocalDate.of(2025, 3, 26), kept(3, 26, SundayBeside.NEAREST));
  }

  /** Sunday 2 November 2025 keeps All Souls, Sunday 9 November the Lateran Basilica. */
  @Test
  void it_stays_on_its_day_where_the_sunday_has_been_taken() {
    assertEquals(LocalDate.of(2025, 11, 5), kept(11, 5, SundayBeside.BEFORE));
    assertEquals(LocalDate.of(2025, 11, 5), kept(11, 5, SundayBeside.NEAREST));
  }

  @Test
  void a_dedication_on_a_sunday_stays_there() {
    assertEquals(LocalDate.of(2025, 10, 19), kept(10, 19, SundayBeside.AFTER));
  }

  /** UNLY 58 with canon 1246: a day that obliges is not emptied. */
  @Test
  void a_holy_day_of_obligation_is_not_taken_from_its_date() {
    LiturgicalCalendar church =
        LiturgicalCalendar.of(
            CalendarSettings.defaultsOf("general"),
            List.of(
                new Proper.Titular("assumption"),
                new Proper.OnSunday("assumption", SundayBeside.NEAREST)));

    assertEquals("assumption", church.day(LocalDate.of(2025, 8, 15)).kept().id());
  }

  /** It must stand above the Sunday (UNLY 59 II.6); a feast of the diocese does not. */
  @Test
  void a_feast_that_does_not_outrank_the_sunday_stays_on_its_day() {
    LiturgicalCalendar church =
        LiturgicalCalendar.of(
            CalendarSettings.defaultsOf("general"),
            List.of(
                new Proper.Placed("martin-of-tours", ProperPlace.PATRON_OF_THE_DIOCESE),
                new Proper.OnSunday("martin-of-tours", SundayBeside.AFTER)));

    assertEquals("martin-of-tours", church.day(LocalDate.of(2025, 11, 11)).kept().id());
  }

  private static LocalDate kept(int month, int day, SundayBeside sunday) {
    return church(month, day, sunday)
        .days(LocalDate.of(2025, 1, 1), LocalDate.of(2025, 12, 31))
        .stream()
        .filter(d -> d.kept().id().equals(DEDICATION))
        .findFirst()
        .orElseThrow()
        .date();
  }

  private static LiturgicalCalendar church(int month, int day, SundayBeside sunday) {
    return LiturgicalCalendar.of(
        CalendarSettings.defaultsOf("general"),
        List.of(
            new Proper.Dedication(MonthDay.of(month, day)),
            new Proper.OnSunday(DEDICATION, sunday)));
  }
}
