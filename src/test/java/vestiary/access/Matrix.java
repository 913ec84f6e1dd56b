package vestiary.access;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What each address answered to each kind of visitor, for the report of the tests. */
final class Matrix {

  private final List<String> visitors;
  private final Map<String, Map<String, String>> cells = new LinkedHashMap<>();

  Matrix(List<String> visitors) {
    this.visitors = List.copyOf(visitors);
  }

  /** Notes that an address was called, or is still to be. */
  void expect(String address) {
    cells.computeIfAbsent(address, a -> new LinkedHashMap<>());
  }

  void put(String address, String visitor, int status) {
    expect(address);
    cells.get(address).put(visitor, String.valueOf(status));
  }

  /** Cells in which nothing stands. */
  List<String> untested() {
    List<String> untested = new ArrayList<>();
    cells.forEach(
        (address, row) ->
            visitors.stream()
                .filter(visitor -> !row.containsKey(visitor))
                .forEach(visitor -> untested.add(address + " as " + visitor)));
    return untested;
  }

  void write(Path file) {
    StringBuilder table =
        new StringBuilder(
            "# %d addresses × %d kinds of visitor%n%n".formatted(cells.size(), visitors.size()));
    table.append(
        "401 and 403: the door is shut. Everything else comes from behind it; nothing that is asked for is there (404), and no body can be used (400).%n%n"
            .formatted());
    table.append("| address | ").append(String.join(" | ", visitors)).append(" |\n");
    table.append("|---".repeat(visitors.size() + 1)).append("|\n");
    cells.forEach(
        (address, row) -> {
          table.append("| ").append(address);
          visitors.forEach(visitor -> table.append(" | ").append(row.getOrDefault(visitor, "?")));
          table.append(" |\n");
        });
    try {
      Files.createDirectories(file.getParent());
      Files.writeString(file, table);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
