package vestiary.regrouping;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import vestiary.backup.KeptTable;

/**
 * What a cluster has once, as its settings: those of the cluster that remains hold for both, and
 * what held in the one that ends stands in the history.
 */
final class EndedSettings {

  private static final String OWN =
      "array['cluster_id', 'id', 'version', 'unfolded_until', 'created_at', 'demo_monday', 'set_up']";

  private final WholeDatabase whole;
  private final Questions database;
  private final Side ended;
  private final Side remaining;

  EndedSettings(WholeDatabase whole, Side ended, Side remaining) {
    this.whole = whole;
    this.database = whole.database();
    this.ended = ended;
    this.remaining = remaining;
  }

  /** Writes them into the history of the one that remains, as removed. */
  void note() throws SQLException {
    for (String table : tables()) {
      database.change(
          """
          insert into audit (cluster_id, id, at, visitor, kind, row_id, deed, before, after)
          select ?, gen_random_uuid(), clock_timestamp(), 'server', '%1$s', t.cluster_id, 'removed',
            to_jsonb(t) - %3$s, '{}'
          from %2$s t where t.cluster_id = ?
          """
              .formatted(table, Questions.quoted(table), OWN),
          remaining.id(),
          ended.id());
    }
  }

  /** Each setting of the one that ends that is another in the one that remains. */
  List<String> differences() throws SQLException {
    List<String> all = new ArrayList<>();
    for (String table : tables()) {
      all.addAll(
          database.texts(
              """
              select replace(e.key, '_', ' ') || ': ' || (r.value #>> '{}') || ' (was ' || (e.value #>> '{}') || ')'
              from %1$s a
              join %1$s b on b.cluster_id = ?
              cross join lateral jsonb_each(to_jsonb(a) - %2$s - array['name', 'word']) e
              join lateral jsonb_each(to_jsonb(b)) r on r.key = e.key
              where a.cluster_id = ? and r.value is distinct from e.value
              order by 1
              """
                  .formatted(Questions.quoted(table), OWN),
              remaining.id(),
              ended.id()));
    }
    return all;
  }

  private List<String> tables() {
    return whole.tables().stream()
        .map(KeptTable::name)
        .filter(whole::isOneToACluster)
        .collect(Collectors.toList());
  }
}
