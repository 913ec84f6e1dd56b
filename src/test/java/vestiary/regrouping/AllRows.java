package vestiary.regrouping;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import vestiary.scenario.OwnerDatabase;

/**
 * All rows of a cluster by table, as the owner of the tables sees them, but for the cluster's id.
 *
 * @param byTable sorted lines of JSON; every table is there, also where it has no row
 */
record AllRows(Map<String, List<String>> byTable) {

  private static final String TABLES =
      """
      select table_name from information_schema.columns join information_schema.tables
        using (table_schema, table_name)
      where table_schema = 'public' and table_type = 'BASE TABLE' and column_name = 'cluster_id'
      """;

  static AllRows of(OwnerDatabase owner, UUID cluster) {
    Map<String, List<String>> rows = new TreeMap<>();
    try (Connection connection = owner.getConnection()) {
      for (String table : ask(connection, TABLES)) {
        rows.put(
            table,
            ask(
                connection,
                "select (to_jsonb(t) - 'cluster_id')::text from \"%s\" t where cluster_id = '%s' order by 1"
                    .formatted(table, cluster)));
      }
      return new AllRows(rows);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  List<String> of(String table) {
    return byTable.get(table);
  }

  /** Those of both, sorted. */
  static List<String> both(List<String> some, List<String> others) {
    List<String> all = new ArrayList<>(some);
    all.addAll(others);
    return all.stream().sorted().toList();
  }

  static List<String> ask(Connection connection, String query) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(query)) {
      List<String> rows = new ArrayList<>();
      while (found.next()) {
        rows.add(found.getString(1));
      }
      // The database sorts by its own alphabet.
      return rows.stream().sorted().toList();
    }
  }
}
