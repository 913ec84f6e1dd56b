package vestiary.regrouping;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import vestiary.backup.KeptTable;

/**
 * Makes a second cluster with all that one has, under the same ids, so that all of its history is
 * read in both. Nobody can sign in there until they are let in.
 */
@ApplicationScoped
class CopyCluster {

  /** Doors, and what another cluster sees as well and would see twice. */
  private static final Set<String> NOT_COPIED = Set.of("user_passkey", "user_outside", "lending");

  private final OwnersConnection owner;

  CopyCluster(OwnersConnection owner) {
    this.owner = owner;
  }

  /**
   * Copies it, whole or not at all.
   *
   * @param word by which the people of the new one sign in
   * @param archive where the one that is copied lies as it was
   */
  Side copy(Side from, String word, Path archive) {
    try (Connection connection = owner.open()) {
      Questions database = new Questions(connection);
      try {
        WholeDatabase whole = WholeDatabase.hold(database);
        refuseOpenLendings(database, from);
        UUID id = UUID.randomUUID();
        whole.silenceTriggers();
        for (KeptTable table : whole.tables()) {
          if (whole.isKept(table) && !NOT_COPIED.contains(table.name())) {
            CopyRows.copy(database, table, from.id(), id, instead(table.name(), word));
          }
        }
        whole.wakeTriggers();
        Noted.keep(database, id, "split-from", from, archive.getFileName().toString());
        Side made = Side.find(database, word).orElseThrow();
        connection.commit();
        return made;
      } finally {
        connection.rollback();
      }
    } catch (SQLException e) {
      throw new RegroupingFailed(e);
    }
  }

  /** The word was looked at before: letters, digits and hyphens. */
  private static Map<String, String> instead(String table, String word) {
    return switch (table) {
      case "cluster" ->
          Map.of(
              "word", "'%s'".formatted(word),
              "name", "left(name, 150) || ', %s'".formatted(word),
              "created_at", "now()");
      case "app_user" -> Map.of("password", "''");
      default -> Map.of();
    };
  }

  private static void refuseOpenLendings(Questions database, Side from) throws SQLException {
    if (database.isTrue(
        """
        select exists (select 1 from lending
          where state in ('offered', 'accepted') and ? in (cluster_id, borrower_id))
        """,
        from.id())) {
      throw CannotRegroup.because(
          "%s has lent vestments to another cluster, or borrowed some. Say first that they are back, or withdraw the offer.",
          from);
    }
  }
}
