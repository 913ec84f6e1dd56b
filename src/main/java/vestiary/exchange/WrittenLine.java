package vestiary.exchange;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A line of a list as it is taken out: what a cell says nothing of is empty. */
final class WrittenLine {

  private final Map<String, String> cells = new LinkedHashMap<>();

  /** Puts a value into a column as its text. */
  WrittenLine with(String column, Object value) {
    String text = String.valueOf(value).strip();
    if (!text.isEmpty()) {
      cells.put(column, text);
    }
    return this;
  }

  /** Puts several values into one cell, with bars between. */
  WrittenLine withAll(String column, Stream<?> values) {
    return with(column, values.map(String::valueOf).collect(Collectors.joining("|")));
  }

  /** Says yes, or nothing. */
  WrittenLine withFlag(String column, boolean yes) {
    return with(column, yes ? "true" : "");
  }

  /** Puts a number, or nothing where it is 0, which stands for none. */
  WrittenLine withCount(String column, int number) {
    return with(column, number == 0 ? "" : number);
  }

  String cell(String column) {
    return cells.getOrDefault(column, "");
  }

  /** The texts of these columns, in that order. */
  List<String> cells(List<Column> columns) {
    return columns.stream().map(column -> cell(column.name())).toList();
  }

  /** Whether a line of a file says the same in all columns that the file has. */
  boolean says(CsvLine line) {
    return line.cells().entrySet().stream()
        .allMatch(said -> said.getValue().equals(cell(said.getKey())));
  }
}
