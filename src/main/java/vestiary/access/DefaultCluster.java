package vestiary.access;

import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import java.util.UUID;

/**
 * The cluster of a request that names none: the first that was made on this server. Read past
 * Hibernate, because opening a session already asks for the cluster.
 */
@ApplicationScoped
public class DefaultCluster {

  private final AgroalDataSource database;
  private volatile UUID id;

  DefaultCluster(AgroalDataSource database) {
    this.database = database;
  }

  /**
   * Its id, which never changes once it is there.
   *
   * @throws IllegalStateException if the server has no cluster yet
   */
  public UUID id() {
    UUID known = id;
    if (known == null) {
      known = read();
      id = known;
    }
    return known;
  }

  private UUID read() {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery("select first_cluster()")) {
      found.next();
      return Optional.ofNullable(found.getObject(1, UUID.class))
          .orElseThrow(() -> new IllegalStateException("the server has no cluster yet"));
    } catch (SQLException e) {
      throw new ClusterUnread(e);
    }
  }

  private static final class ClusterUnread extends RuntimeException {
    private static final long serialVersionUID = 1L;

    ClusterUnread(SQLException cause) {
      super(cause);
    }
  }
}
