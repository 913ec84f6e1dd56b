package vestiary.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.calendar.CalendarSettings;
import vestiary.calendar.Celebration;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.problem.DayOrder;

class KnownTitlesTest {

  private static final KnownTitles TITLES =
      new KnownTitles(LiturgicalCalendar.of(CalendarSettings.defaultsOf("us"), List.of()).titles());

  private static final TidyCells TIDY = new TidyCells(Map.of(), Map.of(), TITLES);

  /** Each by the names of the General Roman Calendar in English and Spanish. */
  @ParameterizedTest
  @CsvSource({
    "Santa Ana, joachim-and-anne",
    "santa  ana, joachim-and-anne",
    "St. Anne, joachim-and-anne",
    "San Joaquín y Santa Ana, joachim-and-anne",
    "Santísima Trinidad, trinity-sunday",
    "Holy Trinity, trinity-sunday",
    "Inmaculada Concepción, immaculate-conception",
    "Our Lady of the Rosary, our-lady-of-the-rosary",
    "Ntra. Sra. del Rosario, our-lady-of-the-rosary",
    "Virgen María del Rosario, our-lady-of-the-rosary",
    "Nuestra Señora de Guadalupe, our-lady-of-guadalupe",
    "Santos Pedro y Pablo, peter-and-paul",
    "San Pedro y San Pablo, peter-and-paul",
    "San José Obrero, joseph-the-worker",
    "San Antonio de Padua, anthony-of-padua",
    "San Miguel Arcángel, michael-gabriel-and-raphael",
    "San Jorge, george",
    "Sagrado Corazón de Jesús, sacred-heart",
    "Sagrada Familia, holy-family",
    "'Santiago, apóstol', james-apostle",
    "Santiago Apóstol, james-apostle",
    "trinity-sunday, trinity-sunday"
  })
  void words_that_one_celebration_alone_has_are_that_one(String words, String id) {
    assertEquals(id, TITLES.find(words).map(Celebration::id).orElse("none"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "San Antonio",
        "San Juan",
        "San José",
        "San Pedro",
        "Saint Francis",
        "Santa María",
        "Our Lady",
        "Nuestra Señora de Lima",
        "Santa Rosa",
        "San Expedito",
        "Rosario",
        "Cristo",
        "the",
        "?",
        ""
      })
  void what_may_be_several_or_only_resembles_one_is_none(String words) {
    assertEquals("none", TITLES.find(words).map(Celebration::id).orElse("none"));
  }

  @Test
  void words_are_guessed_for_the_celebration_where_all_are_known_and_for_the_title_besides() {
    assertEquals(
        Map.of("name", 0, "titular", 2, "title", 2),
        guess("Iglesia;Dirección;Titular", "Arriba;Calle 1;Santa Ana", "Abajo;;San Jorge"));
    assertEquals(
        Map.of("name", 0, "titular", 2, "title", 1),
        guess("Iglesia;Título;Titular", "Arriba;Iglesia de Santa Ana;Santa Ana"));
  }

  @Test
  void words_that_are_not_all_known_are_the_title_alone() {
    assertEquals(
        Map.of("name", 0, "title", 2),
        guess("Iglesia;Dirección;Titular", "Arriba;Calle 1;Santa Ana", "Abajo;;San Juan"));
  }

  @Test
  void ids_are_what_they_were() {
    assertEquals(
        Map.of("name", 0, "title", 1, "titular", 2),
        guess("name;title;titular", "Up;Saint Anne;joachim-and-anne", "Down;X;no-such-day"));
    assertEquals(Map.of("name", 0, "titular", 1), guess("name;titular", "Up;joachim-and-anne"));
  }

  @Test
  void a_known_title_is_tidied_into_its_id_and_an_unknown_one_stays() {
    assertEquals("joachim-and-anne", tidy("Santa Ana"));
    assertEquals("San Juan", tidy("San Juan"));
  }

  private static String tidy(String cell) {
    return TIDY.tidy(ImportWhat.CHURCHES, "titular", cell, DayOrder.DAY_MONTH_YEAR);
  }

  private static Map<String, Integer> guess(String... lines) {
    try {
      RawTable table = RawTable.parse(CsvText.parse(Csv.file(lines)));
      return new GuessColumns(ImportWhat.CHURCHES, table, TIDY).guess().places();
    } catch (BadFile unreadable) {
      throw new AssertionError(unreadable);
    }
  }
}
