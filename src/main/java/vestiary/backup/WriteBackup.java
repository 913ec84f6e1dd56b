package vestiary.backup;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.agroal.api.AgroalDataSource;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import vestiary.access.CurrentCluster;

/**
 * Writes every row of the cluster into one archive (APPNOTE.TXT of the ZIP format): a file of JSON
 * lines for each table, rows in the order of their keys, and what the archive says of itself. All
 * of it is read in one transaction that sees the rows as they were when it began, whoever works
 * meanwhile; equal rows make equal files.
 */
@ApplicationScoped
class WriteBackup {

  private static final int ROWS_AT_A_TIME = 200;

  /** Every entry bears the same time, so that equal rows make equal archives but for the date. */
  private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  private final AgroalDataSource database;
  private final CurrentCluster current;
  private final ObjectMapper json;
  private final Clock clock;

  WriteBackup(AgroalDataSource database, CurrentCluster current, ObjectMapper json, Clock clock) {
    this.database = database;
    this.current = current;
    this.json = json;
    this.clock = clock;
  }

  /** A file of its own with the archive; whoever asks for it removes it. */
  Path write() {
    try {
      Path file = Files.createTempFile("backup", ".zip");
      try {
        QuarkusTransaction.requiringNew().run(() -> write(file));
      } catch (RuntimeException e) {
        Files.deleteIfExists(file);
        throw e;
      }
      return file;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void write(Path file) {
    try (Connection connection = database.getConnection();
        ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      asOfNow(connection);
      List<Manifest.Entry> entries = new ArrayList<>();
      for (KeptTable table : Catalogue.tables(connection)) {
        entries.add(write(table, connection, zip));
      }
      begin(zip, Manifest.FILE);
      zip.write(
          json.writerWithDefaultPrettyPrinter().writeValueAsBytes(manifest(connection, entries)));
      zip.closeEntry();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (SQLException e) {
      throw new BackupFailed(e);
    }
  }

  private static void asOfNow(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute("set transaction isolation level repeatable read, read only");
      statement.execute("set local timezone = 'UTC'");
    }
  }

  private Manifest.Entry write(KeptTable table, Connection connection, ZipOutputStream zip)
      throws SQLException, IOException {
    Manifest.Entry nameless = new Manifest.Entry(table.name(), 0, "");
    begin(zip, nameless.file());
    MessageDigest digest = sha256();
    OutputStream out = new DigestOutputStream(zip, digest);
    long rows = 0;
    try (PreparedStatement query = connection.prepareStatement(query(table))) {
      query.setFetchSize(ROWS_AT_A_TIME);
      query.setObject(1, current.id());
      try (ResultSet found = query.executeQuery()) {
        while (found.next()) {
          out.write(found.getString(1).getBytes(StandardCharsets.UTF_8));
          out.write('\n');
          rows++;
        }
      }
    }
    zip.closeEntry();
    return new Manifest.Entry(table.name(), rows, HexFormat.of().formatHex(digest.digest()));
  }

  /** Names come from the database's own catalogue. */
  private static String query(KeptTable table) {
    String columns =
        table.columns().stream()
            .map(column -> chosen(table.name(), column))
            .collect(Collectors.joining(", "));
    String key = table.key().stream().map(WriteBackup::quoted).collect(Collectors.joining(", "));
    return "select row_to_json(line)::text from (select %s from %s where cluster_id = ? order by %s) line"
        .formatted(columns, quoted(table.name()), key);
  }

  private static String chosen(String table, String column) {
    return LeftOut.COLUMNS.containsKey(table + "." + column)
        ? "'' as " + quoted(column)
        : quoted(column);
  }

  private static String quoted(String name) {
    return '"' + name + '"';
  }

  private Manifest manifest(Connection connection, List<Manifest.Entry> entries)
      throws SQLException {
    try (PreparedStatement query =
        connection.prepareStatement("select name, time_zone from cluster where cluster_id = ?")) {
      UUID id = current.id();
      query.setObject(1, id);
      try (ResultSet found = query.executeQuery()) {
        found.next();
        ZoneId zone = ZoneId.of(found.getString(2));
        return new Manifest(
            Manifest.FORMAT,
            Catalogue.schema(connection),
            id.toString(),
            found.getString(1),
            zone.getId(),
            LocalDate.now(clock.withZone(zone)).toString(),
            entries);
      }
    }
  }

  private static void begin(ZipOutputStream zip, String name) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(NO_TIME);
    zip.putNextEntry(entry);
  }

  static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException everyJavaHasIt) {
      throw new IllegalStateException(everyJavaHasIt);
    }
  }
}
