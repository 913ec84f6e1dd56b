package vestiary.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What people read about a day. */
class DaySentencesTest {

  private final LiturgicalCalendar general =
      LiturgicalCalendar.of(CalendarSettings.defaultsOf("general"), List.of());

  @Test
  void a_plain_day_says_its_place_in_the_table_and_its_colour() {
    assertEquals(
        "Monday of the First Week in Ordinary Time (UNLY 59 III.13);"
            + " green, for Ordinary Time (GIRM 346 c).",
        day(2026, 1, 12).reason());
  }

  @Test
  void a_day_with_a_memorial_to_choose_says_so() {
    assertEquals(
        "Tuesday of the First Week in Ordinary Time, unless a memorial is chosen"
            + " (UNLY 59 III.13); green, for Ordinary Time (GIRM 346 c).",
        day(2026, 1, 13).reason());
  }

  @Test
  void a_day_that_displaces_another_says_so_and_lists_it() {
    Day sunday = day(2025, 11, 2);

    assertEquals(
        "The Commemoration of All the Faithful Departed (All Souls' Day), which stands before"
            + " the Thirty-first Sunday in Ordinary Time (UNLY 59 I.3); violet, or black where that is the custom, for"
            + " the dead (GIRM 346 d, e).",
        sunday.reason());
    assertEquals("thirty-first-sunday-in-ordinary-time", sunday.omitted().get(0).id());
  }

  @Test
  void a_transferred_solemnity_says_on_its_own_day_where_it_went() {
    Omission annunciation = day(2024, 3, 25).omitted().get(0);

    assertEquals(
        "Kept on Monday 8 April 2024 instead, because it yields to Monday of Holy Week.",
        annunciation.reason());
    assertEquals(
        "The Annunciation of the Lord, moved here from Monday 25 March 2024 (UNLY 59 I.3);"
            + " white, for a celebration of the Lord other than of his Passion (GIRM 346 a).",
        day(2024, 4, 8).reason());
  }

  @Test
  void an_evening_says_whose_it_is_and_why() {
    Evening evening = day(2026, 6, 23).evening();

    assertEquals(
        "The evening Mass is already of the next day,"
            + " the Nativity of Saint John the Baptist, which stands higher.",
        evening.reason());
    assertEquals("UNLY 61; UNLY 59 I.3", evening.source());
  }

  @Test
  void weekdays_and_green_sundays_have_names_in_three_languages() {
    assertEquals(
        new LocalName(
            "Monday of the Third Week of Lent",
            "Feria II, hebdomada III Quadragesimae",
            "Lunes de la III semana de Cuaresma"),
        day(2026, 3, 9).kept().name());
    assertEquals("monday-week-3-lent", day(2026, 3, 9).kept().id());
    assertEquals("december-17", day(2026, 12, 17).kept().id());
    assertEquals("twelfth-sunday-in-ordinary-time", day(2026, 6, 21).kept().id());
    assertEquals("thursday-after-ash-wednesday", day(2026, 2, 19).kept().id());
    assertEquals(
        "Domingo XXXIII del Tiempo Ordinario",
        day(2026, 11, 15).kept().name().in(Locale.forLanguageTag("es")));
  }

  private Day day(int year, int month, int day) {
    return general.day(LocalDate.of(year, month, day));
  }
}
