package vestiary.backup;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.agroal.api.AgroalDataSource;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import vestiary.access.CurrentCluster;
import vestiary.access.Elsewhere;

/**
 * Brings a cluster back from its archive, under the ids that it had, whole or not at all. It comes
 * into a server that does not have it, or has it with nothing in it.
 */
@ApplicationScoped
public class RestoreBackup {

  /** Characters of lines that are handed to the database in one go. */
  private static final int MUCH = 4 << 20;

  /** What a cluster has that nobody has entered anything in. */
  private static final Set<String> FROM_THE_START = Set.of("cluster", "audit");

  /** Integrity and data errors. Source: PostgreSQL documentation, appendix A, classes 22 and 23. */
  private static final Set<String> UNFIT = Set.of("22", "23");

  private final AgroalDataSource database;
  private final CurrentCluster current;
  private final Elsewhere elsewhere;
  private final ObjectMapper json;

  RestoreBackup(
      AgroalDataSource database, CurrentCluster current, Elsewhere elsewhere, ObjectMapper json) {
    this.database = database;
    this.current = current;
    this.elsewhere = elsewhere;
    this.json = json;
  }

  /**
   * Restores it.
   *
   * @return what the archive says of itself
   * @throws vestiary.problem.Refused if the archive is not whole and as it was written, of another
   *     version, or its cluster is here with something in it
   */
  Manifest restore(Path file) {
    try (Archive archive = Archive.open(file, schema(), json)) {
      Manifest manifest = archive.manifest();
      return elsewhere.call(
          cluster(manifest),
          () -> {
            bringIn(archive);
            return manifest;
          });
    }
  }

  /**
   * Restores the first cluster of a server that has none yet; the archive may be of any size.
   *
   * @return what the cluster is called
   * @throws vestiary.problem.Refused as {@link #restore}
   */
  public String restoreFirst(Path file, Duration longest) {
    try (Archive archive = Archive.open(file, schema(), json)) {
      current.assign(cluster(archive.manifest()));
      QuarkusTransaction.requiringNew()
          .timeout((int) longest.toSeconds())
          .run(() -> bringIn(archive));
      return archive.manifest().name();
    }
  }

  private static UUID cluster(Manifest manifest) {
    try {
      return UUID.fromString(manifest.cluster());
    } catch (IllegalArgumentException noId) {
      throw BadArchive.because(BadArchive.TAMPERED, Manifest.FILE);
    }
  }

  private String schema() {
    try (Connection connection = database.getConnection()) {
      return Catalogue.schema(connection);
    } catch (SQLException e) {
      throw new BackupFailed(e);
    }
  }

  private void bringIn(Archive archive) {
    Manifest manifest = archive.manifest();
    try (Connection connection = database.getConnection()) {
      List<KeptTable> tables = Catalogue.tables(connection);
      List<String> named = manifest.entries().stream().map(Manifest.Entry::table).sorted().toList();
      if (!named.equals(tables.stream().map(KeptTable::name).sorted().toList())) {
        throw BadArchive.because(BadArchive.TAMPERED, Manifest.FILE);
      }
      refuseUnlessEmpty(connection, tables, manifest);
      for (KeptTable table : tables) {
        Manifest.Entry entry =
            manifest.entries().stream()
                .filter(one -> one.table().equals(table.name()))
                .findFirst()
                .orElseThrow();
        try (Stream<String> lines = archive.lines(entry)) {
          bringIn(table, lines.iterator(), connection);
        }
      }
    } catch (SQLException e) {
      if (UNFIT.contains(String.valueOf(e.getSQLState()).substring(0, 2))) {
        throw BadArchive.because(BadArchive.DOES_NOT_FIT);
      }
      throw new BackupFailed(e);
    }
  }

  /** A cluster that is here with nothing in it makes way for the one that comes. */
  private static void refuseUnlessEmpty(
      Connection connection, List<KeptTable> tables, Manifest manifest) throws SQLException {
    boolean isUsed = isTrue(connection, "select exists (select 1 from cluster where set_up)");
    for (KeptTable table : tables) {
      isUsed |=
          !FROM_THE_START.contains(table.name())
              && isTrue(connection, "select exists (select 1 from \"%s\")".formatted(table.name()));
    }
    if (isUsed) {
      throw BadArchive.because(BadArchive.NOT_EMPTY, manifest.name());
    }
  }

  private static boolean isTrue(Connection connection, String question) throws SQLException {
    try (PreparedStatement query = connection.prepareStatement(question);
        ResultSet found = query.executeQuery()) {
      found.next();
      return found.getBoolean(1);
    }
  }

  /** Rows that name others of their own table go in together, since those must be there then. */
  private static void bringIn(KeptTable table, Iterator<String> lines, Connection connection)
      throws SQLException {
    try (PreparedStatement insert = connection.prepareStatement("select restore_rows(?, ?)")) {
      StringBuilder many = new StringBuilder();
      while (lines.hasNext()) {
        many.append(many.isEmpty() ? "[" : ",").append(lines.next());
        if (many.length() > MUCH && !table.pointsToItself()) {
          send(table, many, insert);
        }
      }
      send(table, many, insert);
    }
  }

  private static void send(KeptTable table, StringBuilder many, PreparedStatement insert)
      throws SQLException {
    if (many.isEmpty()) {
      return;
    }
    insert.setString(1, table.name());
    insert.setString(2, many.append(']').toString());
    insert.execute();
    many.setLength(0);
  }
}
