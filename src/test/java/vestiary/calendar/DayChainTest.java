package vestiary.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rules that decided a day, one after another. */
class DayChainTest {

  private final LiturgicalCalendar us =
      LiturgicalCalendar.of(CalendarSettings.defaultsOf("us"), List.of());

  /** UNLY 5, 59, 60; canon 1246. */
  @Test
  void the_immaculate_conception_on_a_sunday_of_advent_is_explained_rule_by_rule() {
    assertEquals(
        List.of(
            "Sunday 8 December 2024 is in the second week of Advent.",
            "The Second Sunday of Advent stands at number 2 of the table of liturgical days; the"
                + " lowest number is kept.",
            "The Immaculate Conception of the Blessed Virgin Mary: kept on Monday 9 December 2024"
                + " instead, because it yields to the Second Sunday of Advent.",
            "Violet, for Advent.",
            "Every Sunday is a day of obligation.",
            "The evening is still this day's: the next, the Immaculate Conception of the Blessed"
                + " Virgin Mary, does not stand higher."),
        sentences(us.day(LocalDate.of(2024, 12, 8))));
  }

  @Test
  void a_solemnity_that_came_from_another_day_says_whence_and_why() {
    Day day = us.day(LocalDate.of(2024, 4, 8));

    assertTrue(
        sentences(day)
            .contains(
                "The Annunciation of the Lord comes here from Monday 25 March 2024, because it"
                    + " yields to Monday of Holy Week."),
        () -> sentences(day).toString());
  }

  @Test
  void every_rule_names_its_norm() {
    for (Day day : us.days(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31))) {
      assertTrue(day.reasons().size() >= 5, day::toString);
      day.reasons().forEach(r -> assertFalse(r.source().isBlank(), r::sentence));
      day.reasons().forEach(r -> assertTrue(r.sentence().endsWith("."), r::sentence));
    }
  }

  /** The duty is a decision for that date; a letter of 2024 was set aside in 2025. */
  @Test
  void monday_9_december_2024_was_held_to_oblige_and_9_december_2030_does_not() {
    Duty held = us.day(LocalDate.of(2024, 12, 9)).duty();
    Duty later = us.day(LocalDate.of(2030, 12, 9)).duty();

    assertTrue(held.obliges());
    assertTrue(held.reason().contains("set aside on 23 January 2025"));
    assertFalse(later.obliges());
    assertEquals("The obligation does not follow a celebration to another date.", later.reason());
  }

  /** Before 2008 a norm that changed is named: decree of 22 April 1990, Notitiae 42 (2006) 96. */
  @ParameterizedTest
  @CsvSource({
    "1989-03-13, false",
    "1989-03-18, true",
    "1989-12-08, false",
    "1985-12-08, true",
    "1985-12-09, true",
    "1977-01-10, false",
    "2008-03-15, false",
    "2024-04-08, false"
  })
  void a_day_under_a_norm_that_changed_says_so(LocalDate date, boolean changed) {
    Day day = us.day(date);

    assertEquals(changed, day.isByPresentNorms());
    assertEquals(
        changed, sentences(day).stream().anyMatch(sentence -> sentence.contains("present norms")));
  }

  /**
   * General Instruction of the Liturgy of the Hours 133: the first week begins Advent, Ordinary
   * Time, Lent and Easter; after Pentecost the number of the week decides. Article 'Ordinary Time
   * alert' (June 2017) for the ninth week. Christmas Time from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "2026-11-29, 1",
    "2026-12-20, 4",
    "2026-12-29, 1",
    "2026-01-02, 1",
    "2026-01-05, 2",
    "2026-01-11, 1",
    "2026-01-12, 1",
    "2026-02-18, 4",
    "2026-02-22, 1",
    "2026-03-22, 1",
    "2026-03-30, 2",
    "2026-04-05, 1",
    "2026-04-12, 2",
    "2026-05-24, 4",
    "2026-05-25, 4",
    "2017-06-05, 1",
    "2026-11-22, 2"
  })
  void the_psalter_begins_anew_with_each_season(LocalDate date, int week) {
    assertEquals(week, us.day(date).psalterWeek());
  }

  /** Liturgy Office of England and Wales, 'Summary of dates 2015'; notice of 11 September 2017. */
  @Test
  void england_is_shown_as_it_was_kept_in_each_year() {
    assertEquals(EpiphanyOn.SUNDAY, CalendarSettings.defaultsOf("england", 2015).epiphany());
    assertEquals(AscensionOn.SUNDAY, CalendarSettings.defaultsOf("england", 2017).ascension());
    assertEquals(EpiphanyOn.DATE, CalendarSettings.defaultsOf("england", 2018).epiphany());
    assertEquals(AscensionOn.THURSDAY, CalendarSettings.defaultsOf("england", 2018).ascension());
    assertEquals(
        CalendarSettings.defaultsOf("england"), CalendarSettings.defaultsOf("england", 2026));
  }

  /** Press reports of July 2007 on the leave that Ireland had for 2008. */
  @Test
  void ireland_kept_patrick_on_15_march_2008_and_joseph_the_day_before() {
    LiturgicalCalendar ireland =
        LiturgicalCalendar.of(CalendarSettings.defaultsOf("ireland"), List.of());

    assertEquals("patrick", ireland.day(LocalDate.of(2008, 3, 15)).kept().id());
    assertEquals("joseph-spouse-of-mary", ireland.day(LocalDate.of(2008, 3, 14)).kept().id());
  }

  private static List<String> sentences(Day day) {
    return day.reasons().stream().map(Reason::sentence).toList();
  }
}
