package vestiary.access;

import io.agroal.api.AgroalPoolInterceptor;
import io.quarkus.arc.Arc;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;

/**
 * Tells the database, with every connection that is taken from the pool, whose rows it may show on
 * it (migration V015); outside a request and a job, nobody's.
 */
@ApplicationScoped
class Fence implements AgroalPoolInterceptor {

  private final CurrentCluster cluster;

  Fence(CurrentCluster cluster) {
    this.cluster = cluster;
  }

  @Override
  public void onConnectionAcquire(Connection connection) {
    String id =
        Arc.container().requestContext().isActive()
            ? cluster.find().map(Object::toString).orElse("")
            : "";
    try (Statement statement = connection.createStatement()) {
      // A query would count as the first of the transaction, which could then not be serializable.
      statement.execute("SET app.cluster = '%s'".formatted(id));
    } catch (SQLException e) {
      throw new NotSet(e);
    }
  }

  private static final class NotSet extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NotSet(SQLException cause) {
      super(cause);
    }
  }
}
