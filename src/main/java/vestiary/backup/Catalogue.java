package vestiary.backup;

import java.sql.Array;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What tables there are, asked of the database itself. */
public final class Catalogue {

  private static final String TABLES =
      """
      select c.relname,
        array(select a.attname::text from pg_attribute a
          where a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped and a.attgenerated = ''
          order by a.attname),
        array(select a.attname::text from pg_index i
          cross join lateral unnest(i.indkey) with ordinality k (attnum, place)
          join pg_attribute a on a.attrelid = c.oid and a.attnum = k.attnum
          where i.indrelid = c.oid and i.indisprimary order by k.place),
        array(select distinct t.relname::text from pg_constraint f join pg_class t on t.oid = f.confrelid
          where f.conrelid = c.oid and f.contype = 'f')
      from pg_class c join pg_namespace n on n.oid = c.relnamespace
      where n.nspname = 'public' and c.relkind in ('r', 'p') and exists (
        select 1 from pg_attribute a
        where a.attrelid = c.oid and a.attname = 'cluster_id' and not a.attisdropped)
      order by c.relname <> 'cluster', c.relname
      """;

  private static final String SCHEMA = "select schema_version()";

  private Catalogue() {}

  /**
   * All tables that a backup holds, the cluster itself first, each after those that its rows name.
   *
   * @throws IllegalStateException if two tables name each other: a bug of ours
   */
  public static List<KeptTable> tables(Connection connection) throws SQLException {
    return all(connection).stream()
        .filter(table -> !LeftOut.TABLES.containsKey(table.name()))
        .toList();
  }

  /**
   * All tables with rows of clusters, those that no backup holds among them, in the same order.
   *
   * @throws IllegalStateException as {@link #tables}
   */
  public static List<KeptTable> all(Connection connection) throws SQLException {
    List<KeptTable> found = new ArrayList<>();
    try (PreparedStatement query = connection.prepareStatement(TABLES);
        ResultSet row = query.executeQuery()) {
      while (row.next()) {
        found.add(
            new KeptTable(
                row.getString(1),
                texts(row.getArray(2)),
                texts(row.getArray(3)),
                Set.copyOf(texts(row.getArray(4)))));
      }
    }
    return inOrder(found);
  }

  /** The version of the newest migration, for example 72. */
  static String schema(Connection connection) throws SQLException {
    try (PreparedStatement query = connection.prepareStatement(SCHEMA);
        ResultSet found = query.executeQuery()) {
      found.next();
      return found.getString(1);
    }
  }

  private static List<KeptTable> inOrder(List<KeptTable> tables) {
    List<KeptTable> left = new ArrayList<>(tables);
    List<KeptTable> ordered = new ArrayList<>();
    Set<String> waiting = new HashSet<>(left.stream().map(KeptTable::name).toList());
    while (!left.isEmpty()) {
      Optional<KeptTable> next =
          left.stream()
              .filter(
                  table ->
                      table.pointsTo().stream()
                          .noneMatch(to -> waiting.contains(to) && !to.equals(table.name())))
              .findFirst();
      KeptTable table =
          next.orElseThrow(() -> new IllegalStateException("tables name each other: " + waiting));
      ordered.add(table);
      left.remove(table);
      waiting.remove(table.name());
    }
    return ordered;
  }

  private static List<String> texts(Array array) throws SQLException {
    return Arrays.asList((String[]) array.getArray());
  }
}
