package vestiary.calendar;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A comma-separated table with one line of headings. Source: RFC 4180. */
final class CsvTable {

  private CsvTable() {}

  /** The lines of one of the calendar's own tables, in order, as heading to cell. */
  static List<Map<String, String>> read(String name) {
    try (InputStream in = CsvTable.class.getResourceAsStream("/calendar/" + name)) {
      if (in == null) throw new IllegalStateException("The table " + name + " is missing.");
      return parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * @throws IllegalArgumentException if a line has more or fewer cells than the headings
   */
  static List<Map<String, String>> parse(String text) {
    List<List<String>> lines = split(text);
    List<String> headings = lines.get(0);
    return lines.stream().skip(1).map(cells -> line(headings, cells)).toList();
  }

  private static Map<String, String> line(List<String> headings, List<String> cells) {
    if (cells.size() != headings.size()) {
      throw new IllegalArgumentException(
          "Expected " + headings.size() + " cells, found " + cells.size() + ": " + cells);
    }
    Map<String, String> line = new HashMap<>();
    for (int i = 0; i < cells.size(); i++) line.put(headings.get(i), cells.get(i));
    return line;
  }

  private static List<List<String>> split(String text) {
    List<List<String>> lines = new ArrayList<>();
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (quoted && c == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"') {
        cell.append('"');
        i++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && c == ',') {
        cells.add(take(cell));
      } else if (!quoted && c == '\n') {
        cells.add(take(cell));
        lines.add(cells);
        cells = new ArrayList<>();
      } else if (quoted || c != '\r') {
        cell.append(c);
      }
    }
    if (!cell.isEmpty() || !cells.isEmpty()) {
      cells.add(take(cell));
      lines.add(cells);
    }
    return lines;
  }

  private static String take(StringBuilder cell) {
    String text = cell.toString();
    cell.setLength(0);
    return text;
  }
}
