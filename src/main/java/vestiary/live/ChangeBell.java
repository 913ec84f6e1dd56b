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
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
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

  /** Rung when nobody could listen for a while: no cluster has this id. */
  private static final UUID ANY_CLUSTER = new UUID(0, 0);

  private final String url;
  private final String user;
  private final String password;
  private final BroadcastProcessor<UUID> changes = BroadcastProcessor.create();
  private final Map<UUID, Long> lastHeard = new ConcurrentHashMap<>();
  private volatile Optional<Long> lastDeaf = Optional.empty();
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

  /**
   * Something for each change of a cluster from some time ago on; several changes may be told as
   * one, and one may be told that was none.
   */
  Multi<UUID> changesIn(UUID cluster, Duration ago) {
    long since = System.nanoTime() - ago.toNanos();
    Multi<UUID> coming =
        changes
            .filter(one -> one.equals(cluster) || one.equals(ANY_CLUSTER))
            .onOverflow()
            .dropPreviousItems();
    // Asked once the stream is there, so that nothing falls between the past and what is coming.
    Multi<UUID> missed =
        Multi.createFrom()
            .deferred(
                () ->
                    isChanged(cluster, since)
                        ? Multi.createFrom().item(cluster)
                        : Multi.createFrom().empty());
    return Multi.createBy().merging().streams(coming, missed);
  }

  private boolean isChanged(UUID cluster, long since) {
    return Stream.of(lastDeaf, Optional.ofNullable(lastHeard.get(cluster)))
        .flatMap(Optional::stream)
        .anyMatch(moment -> moment - since >= 0);
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
          lastDeaf = Optional.of(System.nanoTime());
          changes.onNext(ANY_CLUSTER);
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
          UUID cluster = UUID.fromString(one.getParameter());
          lastHeard.put(cluster, System.nanoTime());
          changes.onNext(cluster);
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
