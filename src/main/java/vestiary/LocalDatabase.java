package vestiary;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * The PostgreSQL that comes along. Data survive restarts and power cuts (fsync is on, which the
 * library turns off for tests); a PostgreSQL left over from a killed server is stopped first.
 */
final class LocalDatabase {

  private static final String NAME = "vestiary";

  /** Lets itself in without a password from this machine alone, as the library sets it up. */
  private static final String OWNER = "postgres";

  private static final Duration PATIENCE = Duration.ofSeconds(20);

  private LocalDatabase() {}

  /**
   * Starts it and tells Quarkus where it is.
   *
   * @throws DataFolder.InUse if another server has the folder
   * @throws NotStarted if PostgreSQL does not come up; the sentence says what to look at
   */
  static void start(DataFolder folder) {
    folder.lock();
    stopLeftOver(folder.database());
    try {
      EmbeddedPostgres postgres = open(folder);
      createDatabase(postgres);
      Login owner = Login.of(postgres.getJdbcUrl(OWNER, NAME), OWNER, OWNER);
      try (Connection connection = owner.connect()) {
        LimitedRole.prepare(connection, owner)
            .orElseThrow(() -> new IllegalStateException("its owner may make no roles"))
            .forEach(System::setProperty);
      }
      System.setProperty("vestiary.database.local", "true");
    } catch (IOException | SQLException | IllegalStateException e) {
      throw new NotStarted(
          "The PostgreSQL in %s did not start: %s. Look at that folder's rights and free space, or name a PostgreSQL of your own in QUARKUS_DATASOURCE_JDBC_URL."
              .formatted(folder.database(), e.getMessage()));
    }
  }

  private static EmbeddedPostgres open(DataFolder folder) throws IOException {
    return EmbeddedPostgres.builder()
        .setDataDirectory(folder.database())
        .setCleanDataDirectory(false)
        .setOverrideWorkingDirectory(folder.binaries().toFile())
        .setPGStartupWait(PATIENCE)
        .setServerConfig("fsync", "on")
        .setServerConfig("synchronous_commit", "on")
        .setServerConfig("full_page_writes", "on")
        .start();
  }

  private static void createDatabase(EmbeddedPostgres postgres) throws SQLException {
    try (Connection connection = postgres.getPostgresDatabase().getConnection();
        Statement statement = connection.createStatement();
        ResultSet found =
            statement.executeQuery(
                "select 1 from pg_database where datname = '%s'".formatted(NAME))) {
      if (!found.next()) {
        statement.execute("create database " + NAME);
      }
    }
  }

  /**
   * Since this process holds the folder's lock, a PostgreSQL that still runs on it was left by a
   * server that was killed. It is asked to stop; the file it leaves when it is killed itself would
   * keep the next one from starting if its number now belongs to some other process.
   */
  private static void stopLeftOver(Path database) {
    Path pidFile = database.resolve("postmaster.pid");
    try {
      if (!Files.exists(pidFile)) {
        return;
      }
      Optional<ProcessHandle> leftOver = postgresNamedIn(pidFile);
      leftOver.ifPresent(LocalDatabase::stop);
      Files.deleteIfExists(pidFile);
    } catch (IOException e) {
      throw new NotStarted("%s cannot be read: %s".formatted(pidFile, e.getMessage()));
    }
  }

  private static Optional<ProcessHandle> postgresNamedIn(Path pidFile) throws IOException {
    List<String> lines = Files.readAllLines(pidFile);
    if (lines.isEmpty() || !lines.get(0).strip().matches("\\d{1,10}")) {
      return Optional.empty();
    }
    return ProcessHandle.of(Long.parseLong(lines.get(0).strip()))
        .filter(p -> p.info().command().map(c -> c.contains("postgres")).orElse(true));
  }

  private static void stop(ProcessHandle postgres) {
    postgres.destroy();
    if (!ended(postgres)) {
      postgres.destroyForcibly();
      ended(postgres);
    }
  }

  private static boolean ended(ProcessHandle process) {
    try {
      process.onExit().get(PATIENCE.toSeconds(), TimeUnit.SECONDS);
      return true;
    } catch (TimeoutException e) {
      return false;
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** Said to the person who starts the server. */
  static final class NotStarted extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NotStarted(String sentence) {
      super(sentence);
    }
  }
}
