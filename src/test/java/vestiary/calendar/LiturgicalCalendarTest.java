package vestiary.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LiturgicalCalendarTest {

  private final LiturgicalCalendar us = calendar("us");

  @Test
  void the_calendars_offered_begin_with_the_general_one() {
    List<String> ids = LiturgicalCalendar.offered().stream().map(OfferedCalendar::id).toList();

    assertEquals(List.of("general", "us", "england", "wales", "ireland", "canada"), ids);
  }

  @Test
  void the_united_states_keep_three_movable_days_on_sunday() {
    assertEquals(
        new CalendarSettings(
            "us", EpiphanyOn.SUNDAY, AscensionOn.SUNDAY, CorpusChristiOn.SUNDAY, Evenings.USUAL),
        CalendarSettings.defaultsOf("us"));
  }

  @Test
  void the_first_and_the_last_date_have_an_answer() {
    assertEquals("mary-mother-of-god", us.day(LiturgicalCalendar.FIRST).kept().id());
    assertEquals(LiturgicalCalendar.LAST, us.day(LiturgicalCalendar.LAST).date());
    assertEquals("december-31", us.day(LiturgicalCalendar.LAST).kept().id());
  }

  @Test
  void a_date_out_of_bounds_is_refused_with_the_bounds() {
    Exception refusal =
        assertThrows(
            IllegalArgumentException.class, () -> us.day(LiturgicalCalendar.LAST.plusDays(1)));

    assertEquals(
        "The calendar reaches from 1970-01-01 to 2300-12-31, not to 2301-01-01.",
        refusal.getMessage());
    assertThrows(
        IllegalArgumentException.class, () -> us.day(LiturgicalCalendar.FIRST.minusDays(1)));
  }

  @Test
  void days_are_in_order_with_both_ends_and_cross_a_leap_day_and_a_year() {
    List<Day> days = us.days(LocalDate.of(2027, 12, 30), LocalDate.of(2028, 3, 1));

    assertEquals(63, days.size());
    assertEquals(LocalDate.of(2027, 12, 30), days.get(0).date());
    assertEquals(LocalDate.of(2028, 2, 29), days.get(61).date());
    assertEquals(List.of(), us.days(LocalDate.of(2028, 1, 2), LocalDate.of(2028, 1, 1)));
  }

  @Test
  void a_year_is_worked_out_once() {
    assertSame(us.day(LocalDate.of(2026, 6, 1)), us.day(LocalDate.of(2026, 6, 1)));
  }

  @Test
  void many_threads_asking_for_the_same_years_get_the_same_days() {
    List<LocalDate> dates =
        IntStream.range(0, 4000).mapToObj(i -> LocalDate.of(2000 + i % 40, 6, 1)).toList();

    List<Day> days = dates.parallelStream().map(us::day).toList();

    for (int i = 0; i < dates.size(); i++) assertEquals(us.day(dates.get(i)), days.get(i));
  }

  @Test
  void an_unknown_calendar_is_refused_by_name() {
    Exception refusal =
        assertThrows(IllegalArgumentException.class, () -> CalendarSettings.defaultsOf("atlantis"));

    assertTrue(refusal.getMessage().contains("\"atlantis\""));
    assertTrue(refusal.getMessage().contains("ireland"));
  }

  @Test
  void an_unknown_title_is_refused_by_name() {
    Exception refusal =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                LiturgicalCalendar.of(
                    CalendarSettings.defaultsOf("us"), List.of(new Proper.Titular("nobody"))));

    assertEquals(
        "No celebration \"nobody\" of the calendar \"us\" can be the title of a church.",
        refusal.getMessage());
  }

  @Test
  void a_weekday_is_no_title_of_a_church() {
    Proper ashWednesday = new Proper.Titular("ash-wednesday");

    assertThrows(
        IllegalArgumentException.class,
        () -> LiturgicalCalendar.of(CalendarSettings.defaultsOf("us"), List.of(ashWednesday)));
  }

  @Test
  void a_celebration_is_found_by_its_id() {
    assertEquals("Saint Agnes, Virgin and Martyr", english("agnes"));
    assertEquals(Rank.MEMORIAL, us.find("kateri-tekakwitha").orElseThrow().rank());
    assertTrue(calendar("general").find("kateri-tekakwitha").isEmpty());
  }

  @Test
  void a_name_falls_back_to_english_and_says_so() {
    LocalName kateri = us.find("kateri-tekakwitha").orElseThrow().name();

    assertEquals("Saint Kateri Tekakwitha, Virgin", kateri.in(Locale.forLanguageTag("la")));
    assertEquals("Santa Catalina Tekakwitha, virgen", kateri.in(Locale.forLanguageTag("es")));
    assertTrue(!kateri.isTranslated(Locale.forLanguageTag("la")));
  }

  private String english(String id) {
    return us.find(id).orElseThrow().name().english();
  }

  private static LiturgicalCalendar calendar(String id) {
    return LiturgicalCalendar.of(CalendarSettings.defaultsOf(id), List.of());
  }
}
