package vestiary.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TypedDatesTest {

  private static final LocalDate CHRISTMAS_EVE = LocalDate.of(2026, 12, 24);
  private static final LocalDate LAST = LocalDate.of(2026, 12, 31);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-12-24, 2026-12-31",
        "2026-12-24 2026-12-31",
        "24 December 2026, 31 December 2026",
        "24th Dec 2026 and 31st Dec 2026",
        "December 24, 2026, December 31, 2026",
        "Thursday, December 24, 2026; Thursday, December 31, 2026",
        "Thursday 24 December 2026\nThursday 31 December 2026",
        "24.12.2026, 31.12.2026",
        "24/12/2026, 31/12/2026",
        "24/12/2026 31/12/2026",
        "12/24/2026, 12/31/2026",
        "24-12-26, 31.12.26",
        "24 de diciembre de 2026, 31 de diciembre de 2026",
        "24 de diciembre de 2026 y 31 de diciembre de 2026",
        "jueves, 24 de diciembre de 2026, jueves, 31 de diciembre de 2026",
        " 24 dic 2026 ,, 31 dic 2026, "
      })
  void dates_are_read_as_people_write_them(String text) {
    assertEquals(List.of(CHRISTMAS_EVE, LAST), read(text, new Asked()));
  }

  @Test
  void nothing_is_no_date() {
    assertEquals(List.of(), read(" , ", new Asked()));
  }

  @Test
  void a_date_that_can_be_read_both_ways_is_refused_with_both_readings() {
    assertEquals(
        List.of(
            "except \"8/12/2026\" can be read as 8 December 2026 or as 12 August 2026; write the"
                + " month as a word, or year, month and day as in 2026-12-08."),
        faults("8/12/2026"));
  }

  @Test
  void another_date_beside_it_tells_the_order() {
    assertEquals(
        List.of(LocalDate.of(2027, 1, 6), CHRISTMAS_EVE),
        read("6/1/2027, 24/12/2026", new Asked()));
    assertEquals(
        List.of(LocalDate.of(2027, 1, 6), CHRISTMAS_EVE),
        read("1/6/2027, 12/24/2026", new Asked()));
    assertEquals(1, faults("6/1/2027, 24/12/2026, 12/24/2026").size());
  }

  @Test
  void points_and_equal_numbers_are_never_ambiguous() {
    assertEquals(
        List.of(LocalDate.of(2026, 12, 8), LocalDate.of(2026, 8, 8)),
        read("8.12.2026, 8/8/2026", new Asked()));
  }

  @Test
  void what_is_no_date_is_named_and_the_others_are_read() {
    Asked asked = new Asked();

    assertEquals(List.of(LAST), read("31.2.2026, soon, 31.12.2026", asked));
    assertEquals(
        List.of(
            "except \"31.2.2026\" is no date; write it as 24 December 2026, or as 2026-12-24.",
            "except \"soon\" is no date; write it as 24 December 2026, or as 2026-12-24."),
        asked.faults().stream().map(FieldFault::sentence).toList());
  }

  private static List<LocalDate> read(String text, Asked asked) {
    return TypedDates.read("except", text, asked);
  }

  private static List<String> faults(String text) {
    Asked asked = new Asked();
    read(text, asked);
    return asked.faults().stream().map(FieldFault::sentence).toList();
  }
}
