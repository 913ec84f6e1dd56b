package vestiary.live;

import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import io.smallrye.mutiny.Multi;
import io.smallrye.mutiny.operators.multi.processors.BroadcastProcessor;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.postgresql.PGConnection;
import org.postgresql.PGNotification;

/**
 * Hears what the database announces to all copies of the server. It listens on a connection of its
 * own, since one that is lent out for ever would be missing from the pool.
 */
@ApplicationScoped
class ChangeBell {

  private static final Logger LOG = Logger.getLogger(ChangeBell.class);

  private static final int LOOK_UP_MILLIS = 10_000;
  private static final Duration TRY_AGAIN = Duration.ofSeconds(2);

  private final String url;
  private final String user;
  private final String password;
  private final BroadcastProcessor<Change> changes = BroadcastProcessor.create();
  private final Thread ear = new Thread(this::listen, "changes in the database");
  private volatile boolean stopping;

  ChangeBell(
      @ConfigProperty(name = "quarkus.datasource.jdbc.url") String url,
      @ConfigProperty(name = "quarkus.datasource.username", defaultValue = "") String user,
      @ConfigProperty(name = "quarkus.datasource.password", defaultValue = "") String password) {
    this.url = url;
    this.user = user;
    this.password = password;
  }

  /** Something was changed: in one cluster, or perhaps in any while nobody could listen. */
  sealed interface Change {

    /** Whether the pages of a cluster may show it. */
    boolean concerns(UUID cluster);
  }

  private record Within(UUID cluster) implements Change {
    @Override
    public boolean concerns(UUID other) {
      return cluster.equals(other);
    }
  }

  private record Perhaps() implements Change {
    @Override
    public boolean concerns(UUID cluster) {
      return true;
    }
  }

  /** All changes of a cluster from now on; several may be told as one. */
  Multi<Change> changesIn(UUID cluster) {
    return changes.filter(change -> change.concerns(cluster)).onOverflow().dropPreviousItems();
  }

  void begin(@Observes @Priority(5000) StartupEvent start) {
    ear.setDaemon(true);
    ear.start();
  }

  void end(@Observes ShutdownEvent end) {
    stopping = true;
    ear.interrupt();
    changes.onComplete();
  }

  private void listen() {
    boolean missed = false;
    while (!stopping) {
      try (Connection connection = DriverManager.getConnection(url, user, password);
          Statement statement = connection.createStatement()) {
        statement.execute("LISTEN vestiary_change");
        if (missed) {
          changes.onNext(new Perhaps());
        }
        hear(connection.unwrap(PGConnection.class));
      } catch (SQLException e) {
        // The requests say that the database is away; here it is enough to come back.
        LOG.debug("Changes cannot be heard for the moment", e);
      }
      missed = true;
      rest();
    }
  }

  private void hear(PGConnection connection) throws SQLException {
    while (!stopping) {
      PGNotification[] heard = connection.getNotifications(LOOK_UP_MILLIS);
      if (heard != null) {
        for (PGNotification one : heard) {
          changes.onNext(new Within(UUID.fromString(one.getParameter())));
        }
      }
    }
  }

  private void rest() {
    try {
      Thread.sleep(TRY_AGAIN.toMillis());
    } catch (InterruptedException e) {
      stopping = true;
    }
  }
}
