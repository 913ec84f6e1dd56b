package vestiary.regrouping;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.backup.KeptTable;

/** Gives every row of a cluster to another, under the id that it has. */
final class MoveRows {

  /** Beyond any turn: rows that are counted anew are put there first, since two never share one. */
  private static final int ASIDE = 1_000_000_000;

  private final WholeDatabase whole;
  private final Questions database;
  private final UUID ended;
  private final UUID remaining;

  MoveRows(WholeDatabase whole, UUID ended, UUID remaining) {
    this.whole = whole;
    this.database = whole.database();
    this.ended = ended;
    this.remaining = remaining;
  }

  /** How many rows went over, by table, and how many ended. */
  record Moved(Map<String, Integer> rows, Map<String, Integer> gone) {}

  Moved move() throws SQLException {
    whole.silenceTriggers();
    Map<String, Integer> gone = removeWhatEnds();
    keepTurns();
    List<KeptTable> going =
        whole.tables().stream()
            .filter(table -> !table.name().equals(MeetingRules.CLUSTER))
            .toList();
    Map<String, Integer> rows = new LinkedHashMap<>();
    for (KeptTable table : going) {
      rows.put(table.name(), CopyRows.copy(database, table, ended, remaining, Map.of()));
    }
    for (KeptTable table : reversed(going)) {
      deleteEnded(table.name());
    }
    nameTheRemaining();
    deleteEnded(MeetingRules.CLUSTER);
    whole.wakeTriggers();
    rows.values().removeIf(count -> count == 0);
    return new Moved(rows, gone);
  }

  private Map<String, Integer> removeWhatEnds() throws SQLException {
    Map<String, Integer> gone = new LinkedHashMap<>();
    for (KeptTable table : reversed(whole.tables())) {
      String name = table.name();
      int removed = 0;
      if (name.equals(MeetingRules.CLUSTER)) {
        continue;
      }
      if (name.equals("oversight")) {
        removed += endOversight();
      } else if (MeetingRules.ends(table, whole.isKept(table)) || whole.isOneToACluster(name)) {
        removed += deleteEnded(name);
      } else if (MeetingRules.ONE_IS_ENOUGH.containsKey(name)) {
        for (UniqueKey key : whole.keysOf(name)) {
          removed += key.removeMeeting(database, ended, remaining);
        }
      }
      if (removed > 0) {
        gone.put(name, removed);
      }
    }
    return gone;
  }

  /** Leave to look in was given by one cluster for itself alone; nobody oversees his own. */
  private int endOversight() throws SQLException {
    return deleteEnded("oversight")
        + database.change(
            "delete from oversight where cluster_id = ? and home_id = ?", remaining, ended);
  }

  /** What is counted in the one that ends comes first, so that the newest stays the newest. */
  private void keepTurns() throws SQLException {
    for (UniqueKey key : whole.keys()) {
      if (!key.compared().contains(MeetingRules.TURN)) {
        continue;
      }
      String same =
          key.compared().stream()
              .filter(column -> !column.equals(MeetingRules.TURN))
              .map(column -> " and e.%1$s = r.%1$s".formatted(column))
              .collect(Collectors.joining());
      String table = Questions.quoted(key.table());
      database.change(
          "update %1$s r set turn = turn + %3$d where cluster_id = ? and exists (select 1 from %1$s e where e.cluster_id = ?%2$s)"
              .formatted(table, same, ASIDE),
          remaining,
          ended);
      database.change(
          "update %1$s r set turn = turn - %3$d + (select max(e.turn) from %1$s e where e.cluster_id = ?%2$s) where cluster_id = ? and turn > %3$d"
              .formatted(table, same, ASIDE),
          ended,
          remaining);
    }
  }

  private void nameTheRemaining() throws SQLException {
    for (Map.Entry<String, Set<String>> naming : MeetingRules.OTHER_CLUSTERS.entrySet()) {
      for (String column : naming.getValue()) {
        database.change(
            "update %1$s set %2$s = ? where %2$s = ?".formatted(naming.getKey(), column),
            remaining,
            ended);
      }
    }
  }

  private int deleteEnded(String table) throws SQLException {
    return database.change(
        "delete from %s where cluster_id = ?".formatted(Questions.quoted(table)), ended);
  }

  private static List<KeptTable> reversed(List<KeptTable> tables) {
    List<KeptTable> reversed = new ArrayList<>(tables);
    Collections.reverse(reversed);
    return reversed;
  }
}
