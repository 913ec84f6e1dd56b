package vestiary.exchange;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** Small files and lines for the tests of this package. */
final class Csv {

  private Csv() {}

  static byte[] file(String... lines) {
    return (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8);
  }

  /** A line of these cells: column, text, column, text and so on; a later text wins. */
  static CsvLine line(String... columnsAndTexts) {
    Map<String, String> cells = new LinkedHashMap<>();
    for (int i = 0; i < columnsAndTexts.length; i += 2) {
      cells.put(columnsAndTexts[i], columnsAndTexts[i + 1]);
    }
    return new CsvLine(2, cells);
  }

  /** The same line with another text in one column. */
  static CsvLine with(CsvLine line, String column, String text) {
    Map<String, String> cells = new LinkedHashMap<>(line.cells());
    cells.put(column, text);
    return new CsvLine(line.number(), cells);
  }
}
