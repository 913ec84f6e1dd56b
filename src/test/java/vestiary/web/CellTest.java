package vestiary.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CellTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "+44 20",
        "-97.5",
        "@SUM(A1)",
        "\t=1",
        "'=1",
        "''-1",
        "'tis",
        "'",
        "",
        "a"
      })
  void a_text_comes_back_from_its_cell_as_it_was(String text) {
    assertEquals(text, Cell.asWritten(Cell.harmless(text)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1", "+1", "-1", "@A", "\t=1", "\r=1"})
  void no_cell_begins_as_a_formula_does(String text) {
    assertNotEquals(text.charAt(0), Cell.harmless(text).charAt(0));
  }
}
