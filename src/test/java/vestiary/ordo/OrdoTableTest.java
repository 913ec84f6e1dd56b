package vestiary.ordo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import vestiary.web.Cell;

class OrdoTableTest {

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '"',
      value = {
        "=1+1, '=1+1",
        "+44, '+44",
        "-1, '-1",
        "@SUM(A1), '@SUM(A1)",
        "\"\t=1\", \"'\t=1\"",
        "\"\r=1\", \"'\r=1\"",
        "Saint Anne = 1, Saint Anne = 1",
        "\"\", \"\""
      })
  void a_cell_that_a_spreadsheet_would_reckon_with_is_marked_as_text(String cell, String kept) {
    assertEquals(kept, Cell.harmless(cell));
  }
}
