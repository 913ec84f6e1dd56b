package vestiary.exchange;

import io.agroal.api.AgroalDataSource;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.enterprise.event.Observes;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.ZoneId;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import vestiary.access.CurrentCluster;
import vestiary.backup.RestoreBackup;
import vestiary.cluster.OpenCluster;

/**
 * On an empty database: opens the first cluster, from a backup if one is named, else with the demo
 * in it if that is wanted, and then the small one beside it.
 */
@ApplicationScoped
class FirstStart {

  private static final Logger LOG = Logger.getLogger("vestiary");

  /** Any number will do that nothing else on the database uses: "vestiary" in ASCII. */
  private static final long TURN = 0x7665737469617279L;

  /** A busy or slow machine takes its time over the demo's lists; the usual minute may not do. */
  private static final Duration LONGEST = Duration.ofMinutes(10);

  private final AgroalDataSource database;
  private final CurrentCluster current;
  private final OpenCluster open;
  private final Demo demo;
  private final RestoreBackup restore;
  private final Optional<Path> backup;
  private final boolean wantsDemo;

  FirstStart(
      AgroalDataSource database,
      CurrentCluster current,
      OpenCluster open,
      Demo demo,
      RestoreBackup restore,
      @ConfigProperty(name = "vestiary.restore") Optional<Path> backup,
      @ConfigProperty(name = "vestiary.demo") Optional<Boolean> chosen,
      @ConfigProperty(name = "vestiary.database.local", defaultValue = "false") boolean local) {
    this.database = database;
    this.current = current;
    this.open = open;
    this.demo = demo;
    this.restore = restore;
    this.backup = backup;
    this.wantsDemo = chosen.orElse(local);
  }

  @ActivateRequestContext
  void prepare(@Observes StartupEvent start) throws SQLException {
    // Copies that start together on one empty database take their turn; the lock goes with the
    // connection.
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute("select pg_advisory_lock(%d)".formatted(TURN));
      try {
        if (!hasCluster(statement)) {
          openFirstCluster();
        }
      } finally {
        statement.execute("select pg_advisory_unlock(%d)".formatted(TURN));
      }
    }
  }

  private void openFirstCluster() {
    if (backup.isPresent()) {
      LOG.infof("%s is back from its backup.", restore.restoreFirst(backup.get(), LONGEST));
      return;
    }
    open(wantsDemo ? demo::load : () -> {});
    if (wantsDemo) {
      open(demo::loadSecond);
    }
    LOG.info(wantsDemo ? "The demo cluster is ready." : "An empty cluster is ready to be set up.");
  }

  private void open(Runnable filling) {
    UUID id = UUID.randomUUID();
    current.assign(id);
    QuarkusTransaction.requiringNew()
        .timeout((int) LONGEST.toSeconds())
        .run(
            () -> {
              open.open(id, ZoneId.systemDefault());
              filling.run();
            });
  }

  private static boolean hasCluster(Statement statement) throws SQLException {
    try (ResultSet found = statement.executeQuery("select first_cluster() is not null")) {
      found.next();
      return found.getBoolean(1);
    }
  }
}
