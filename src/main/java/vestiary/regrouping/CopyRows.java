package vestiary.regrouping;

import java.sql.SQLException;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.backup.KeptTable;

/** Writes the rows that one cluster has of a table once more, under the id of another. */
final class CopyRows {

  private CopyRows() {}

  /**
   * Copies them.
   *
   * @param instead what stands in a column of the copy instead, as SQL, by column
   * @return how many there are
   */
  static int copy(
      Questions database, KeptTable table, UUID from, UUID to, Map<String, String> instead)
      throws SQLException {
    String columns =
        table.columns().stream().map(Questions::quoted).collect(Collectors.joining(", "));
    String values =
        table.columns().stream()
            .map(
                column ->
                    column.equals("cluster_id")
                        ? "?"
                        : instead.getOrDefault(column, Questions.quoted(column)))
            .collect(Collectors.joining(", "));
    return database.change(
        "insert into %1$s (%2$s) select %3$s from %1$s where cluster_id = ?"
            .formatted(Questions.quoted(table.name()), columns, values),
        to,
        from);
  }
}
