package vestiary.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.problem.DayOrder;

class DayAndTimeTest {

  private static final TidyCells TIDY =
      new TidyCells(Map.of("ht", "ht"), Map.of(), KnownTitles.NONE);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-12-24 18:30",
        "2026-12-24T18:30",
        "2026-12-24T18:30:00",
        "24.12.2026 18:30",
        "24.12.2026, 18.30 Uhr",
        "24.12.2026 um 18:30",
        "24/12/2026 6:30 pm",
        "24/12/2026 6:30\u202fPM",
        "24/12/2026 6:30 p. m.",
        "24/12/2026 6:30 p.\u00a0m.",
        "24/12/2026 a las 18:30",
        "24 de diciembre de 2026, 18:30",
        "Thu, 24 December 2026 at 18h30"
      })
  void one_cell_is_read_as_the_day_and_as_the_time(String cell) {
    assertEquals("2026-12-24", tidy("date", cell));
    assertEquals("18:30", tidy("time", cell));
    assertTrue(DayAndTime.isIn(List.of(cell)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"24.12.2026", "18:30", "24.12.2026 00:00", "24.12.2026 choir", ""})
  void a_day_or_a_time_alone_is_not_both(String cell) {
    assertFalse(DayAndTime.isIn(List.of(cell)));
  }

  @Test
  void midnight_is_a_time_where_other_times_stand_beside_it() {
    assertTrue(DayAndTime.isIn(List.of("24.12.2026 00:00", "25.12.2026 10:00")));
    assertFalse(DayAndTime.isIn(List.of("24.12.2026 00:00", "25.12.2026 00:00")));
  }

  @Test
  void a_column_with_both_is_guessed_for_both() {
    assertEquals(
        Map.of("church", 0, "date", 1, "time", 1),
        guess("Church;Date and time", "ht;24.12.2026 18:30"));
    assertEquals(
        Map.of("church", 1, "date", 0, "time", 0), guess("Fecha;Iglesia", "2026-12-24 18:30;ht"));
  }

  @Test
  void when_it_ends_is_neither_the_day_nor_the_time() {
    assertEquals(
        Map.of("church", 2, "date", 1, "time", 1),
        guess("Ende;Beginn;Kirche", "24.12.2026 19:30;24.12.2026 18:30;ht"));
    assertEquals(
        Map.of("church", 2, "date", 1, "time", 1),
        guess("Fin;Fecha;Iglesia", "24/12/2026 19:30;24/12/2026 18:30;ht"));
  }

  @Test
  void columns_that_are_called_so_stay_apart_though_a_spreadsheet_writes_both_in_each() {
    assertEquals(
        Map.of("church", 2, "date", 0, "time", 1),
        guess("Fecha;Hora;Iglesia", "24/12/2026 0:00;30/12/1899 18:30;ht"));
  }

  @Test
  void a_day_with_midnight_behind_it_does_not_tell_the_time() {
    assertEquals(Map.of("church", 1, "date", 0), guess("Fecha;Iglesia", "24/12/2026 0:00:00;ht"));
  }

  private static String tidy(String column, String cell) {
    return TIDY.tidy(ImportWhat.MASSES, column, cell, DayOrder.DAY_MONTH_YEAR);
  }

  private static Map<String, Integer> guess(String header, String line) {
    try {
      RawTable table = RawTable.parse(CsvText.parse(Csv.file(header, line)));
      return new GuessColumns(ImportWhat.MASSES, table, TIDY).guess().places();
    } catch (BadFile unreadable) {
      throw new AssertionError(unreadable);
    }
  }
}
