package vestiary.regrouping;

import java.sql.SQLException;
import java.util.UUID;

/** That clusters were regrouped, noted in the one that it is told of, and so in its history. */
final class Noted {

  private Noted() {}

  /**
   * Notes it.
   *
   * @param kind merged, split-off or split-from
   */
  static void keep(Questions database, UUID cluster, String kind, Side other, String archive)
      throws SQLException {
    database.change("select set_config('app.visitor', 'server', true)");
    database.change(
        """
        insert into regrouping (cluster_id, id, kind, other, other_name, other_word, archive, at)
        values (?, gen_random_uuid(), ?, ?, ?, ?, ?, clock_timestamp())
        """,
        cluster,
        kind,
        other.id(),
        other.name(),
        other.word(),
        archive);
    // Pages that are open look again.
    database.change("select pg_notify('vestiary_change', ?)", cluster.toString());
  }

  /** Whether that of the cluster of that word or id is noted in this one. */
  static boolean isThere(Questions database, UUID cluster, String kind, String other)
      throws SQLException {
    return database.isTrue(
        """
        select exists (select 1 from regrouping
          where cluster_id = ? and kind = ? and lower(?) in (other_word, other::text))
        """,
        cluster,
        kind,
        other);
  }
}
