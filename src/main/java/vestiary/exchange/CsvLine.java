package vestiary.exchange;

import java.util.Map;

/**
 * One record of a CSV file.
 *
 * @param number physical line on which it begins, from 1
 * @param cells text by the name of a known column, without blanks around it; columns that the file
 *     lacks are absent
 */
record CsvLine(int number, Map<String, String> cells) {

  CsvLine {
    cells = Map.copyOf(cells);
  }

  /** The text in that column, empty if there is none. */
  String cell(String column) {
    return cells.getOrDefault(column, "");
  }
}
