package vestiary.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** RFC 4180, section 2. */
class CsvTableTest {

  @Test
  void a_quoted_cell_may_hold_commas_quotes_and_line_breaks() {
    String text = "id,name\na,\"Agnes, \"\"Virgin\"\"\nand Martyr\"\n";

    assertEquals(
        List.of(Map.of("id", "a", "name", "Agnes, \"Virgin\"\nand Martyr")), CsvTable.parse(text));
  }

  @Test
  void the_last_line_needs_no_line_break_and_cells_may_be_empty() {
    assertEquals(
        List.of(Map.of("id", "a", "name", ""), Map.of("id", "", "name", "b")),
        CsvTable.parse("id,name\r\na,\r\n,b"));
  }

  @Test
  void a_line_with_too_many_cells_is_refused() {
    assertThrows(IllegalArgumentException.class, () -> CsvTable.parse("id,name\na,b,c\n"));
  }

  @Test
  void a_missing_table_is_named() {
    Exception refusal =
        assertThrows(IllegalStateException.class, () -> CsvTable.read("atlantis.csv"));

    assertEquals("The table atlantis.csv is missing.", refusal.getMessage());
  }
}
