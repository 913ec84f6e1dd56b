package vestiary.regrouping;

import java.sql.SQLException;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import vestiary.backup.Catalogue;
import vestiary.backup.KeptTable;

/**
 * All tables with rows of clusters, held still: nobody else writes into any of them until the
 * transaction ends, and no trigger writes beside what is moved.
 */
record WholeDatabase(
    Questions database, List<KeptTable> tables, Set<String> kept, List<UniqueKey> keys) {

  /** Whoever writes has a moment to end; two that wait for each other are parted by PostgreSQL. */
  private static final String PATIENCE = "20s";

  private static final Set<String> SOMEBODY_WORKS = Set.of("55P03", "40P01");

  /**
   * Waits until nobody writes.
   *
   * @throws vestiary.problem.Refused if somebody goes on writing
   */
  static WholeDatabase hold(Questions database) throws SQLException {
    List<KeptTable> tables = Catalogue.all(database.connection());
    database.change("set local lock_timeout = '%s'".formatted(PATIENCE));
    try {
      database.change("lock table %s in share row exclusive mode".formatted(names(tables)));
    } catch (SQLException e) {
      if (SOMEBODY_WORKS.contains(e.getSQLState())) {
        throw CannotRegroup.because(
            "Somebody works on the clusters just now. Stop every other copy of the server, then start again.");
      }
      throw e;
    }
    return new WholeDatabase(
        database,
        tables,
        Catalogue.tables(database.connection()).stream()
            .map(KeptTable::name)
            .collect(Collectors.toSet()),
        UniqueKey.all(database));
  }

  boolean isKept(KeptTable table) {
    return kept.contains(table.name());
  }

  List<UniqueKey> keysOf(String table) {
    return keys.stream().filter(key -> key.table().equals(table)).toList();
  }

  /** Whether a cluster has one row of that table. */
  boolean isOneToACluster(String table) {
    return keysOf(table).stream().anyMatch(UniqueKey::isOneToACluster);
  }

  /** Whether rows of that table are counted, the first being 1. */
  boolean isCounted(String table) {
    return keysOf(table).stream().anyMatch(key -> key.compared().contains(MeetingRules.TURN));
  }

  /** No trigger writes what was written already, as when a backup comes back. */
  void silenceTriggers() throws SQLException {
    setTriggers("disable");
  }

  void wakeTriggers() throws SQLException {
    setTriggers("enable");
  }

  private void setTriggers(String state) throws SQLException {
    for (KeptTable table : tables) {
      database.change(
          "alter table %s %s trigger user".formatted(Questions.quoted(table.name()), state));
    }
  }

  private static String names(List<KeptTable> tables) {
    return tables.stream()
        .map(table -> Questions.quoted(table.name()))
        .sorted()
        .collect(Collectors.joining(", "));
  }
}
