package vestiary.regrouping;

import java.sql.Array;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;

/**
 * By what no two rows of a cluster are alike: a unique index of the database.
 *
 * @param compared what it compares beside the cluster, as the database writes it
 * @param where which rows it is about, as the database writes it
 * @param isPrimary whether it compares ids
 */
record UniqueKey(
    String table, String name, List<String> compared, String where, boolean isPrimary) {

  private static final String CLUSTER = "cluster_id";

  private static final String ALL =
      """
      select c.relname, x.relname,
        array(select pg_get_indexdef(i.indexrelid, place, true)
          from generate_series(1, i.indnkeyatts::int) place order by place),
        coalesce(pg_get_expr(i.indpred, i.indrelid), 'true'), i.indisprimary
      from pg_index i join pg_class c on c.oid = i.indrelid join pg_class x on x.oid = i.indexrelid
      where c.relnamespace = 'public'::regnamespace and i.indisunique
      order by c.relname, i.indisprimary desc, x.relname
      """;

  UniqueKey {
    compared = List.copyOf(compared);
  }

  /** All that keep rows of one cluster apart; rows of two clusters never meet in another. */
  static List<UniqueKey> all(Questions database) throws SQLException {
    return database.ask(ALL, UniqueKey::read).stream()
        .filter(key -> key.compared.contains(CLUSTER))
        .map(UniqueKey::withoutCluster)
        .toList();
  }

  /** Whether a cluster has one row of it. */
  boolean isOneToACluster() {
    return compared.isEmpty();
  }

  /** What is the same in rows of both, as people entered it. */
  List<String> meetings(Questions database, UUID one, UUID other) throws SQLException {
    String shown = String.join("::text, ", compared.stream().map(UniqueKey::asEntered).toList());
    return database.texts(
        "select distinct concat_ws(', ', %s::text) from %s where %s order by 1 limit %d"
            .formatted(shown, Questions.quoted(table), meeting(), Clashes.MOST_NAMED + 1),
        one,
        other);
  }

  /** Removes what one has and the other has as well; answers how many rows. */
  int removeMeeting(Questions database, UUID one, UUID other) throws SQLException {
    return database.change(
        "delete from %s where %s".formatted(Questions.quoted(table), meeting()), one, other);
  }

  private String meeting() {
    String same = String.join(", ", compared);
    return "cluster_id = ? and (%s) and (%s) in (select %s from %s where cluster_id = ? and (%s))"
        .formatted(where, same, same, Questions.quoted(table), where);
  }

  /** The code of a piece is compared in small letters. */
  private static String asEntered(String compared) {
    return compared.replaceFirst("^lower\\((\\w+)\\)$", "$1");
  }

  private UniqueKey withoutCluster() {
    return new UniqueKey(
        table,
        name,
        compared.stream().filter(column -> !column.equals(CLUSTER)).toList(),
        where,
        isPrimary);
  }

  private static UniqueKey read(ResultSet found) throws SQLException {
    Array compared = found.getArray(3);
    return new UniqueKey(
        found.getString(1),
        found.getString(2),
        Arrays.asList((String[]) compared.getArray()),
        found.getString(4),
        found.getBoolean(5));
  }
}
