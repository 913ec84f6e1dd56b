package vestiary.access;

import io.agroal.api.AgroalPoolInterceptor;
import io.quarkus.arc.Arc;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.UUID;

/**
 * Tells the database, with every connection that is taken from the pool, whose rows it may show on
 * it (migration V015) and who changes them, and on which shared device (V016, V032); outside a
 * request and a job, nobody.
 */
@ApplicationScoped
class Fence implements AgroalPoolInterceptor {

  private final CurrentCluster cluster;

  private final CurrentVisitor visitor;

  Fence(CurrentCluster cluster, CurrentVisitor visitor) {
    this.cluster = cluster;
    this.visitor = visitor;
  }

  @Override
  public void onConnectionAcquire(Connection connection) {
    boolean isAsked = Arc.container().requestContext().isActive();
    String id = isAsked ? cluster.find().map(UUID::toString).orElse("") : "";
    String mark = isAsked ? visitor.visitor().mark() : "";
    String device =
        isAsked && visitor.visitor() instanceof Visitor.Device shared ? shared.id().toString() : "";
    try (Statement statement = connection.createStatement()) {
      // A query would count as the first of the transaction, which could then not be serializable.
      statement.execute(
          "SET app.cluster = '%s'; SET app.visitor = '%s'; SET app.device = '%s'"
              .formatted(id, mark, device));
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
