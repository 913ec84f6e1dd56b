package vestiary.access;

import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** Does a job of the server for one cluster after the other. */
@ApplicationScoped
public class EveryCluster {

  private final AgroalDataSource database;
  private final InCluster within;

  EveryCluster(AgroalDataSource database, InCluster within) {
    this.database = database;
    this.within = within;
  }

  /** Does it for each, in the order in which they were opened. */
  public void each(Runnable work) {
    for (UUID cluster : ids()) {
      within.run(cluster, work);
    }
  }

  private List<UUID> ids() {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery("select * from every_cluster()")) {
      List<UUID> ids = new ArrayList<>();
      while (found.next()) {
        ids.add(found.getObject(1, UUID.class));
      }
      return ids;
    } catch (SQLException e) {
      throw new ClustersUnread(e);
    }
  }

  /** A request of its own for each cluster, since a request keeps the one that it began with. */
  @ApplicationScoped
  static class InCluster {

    private final CurrentCluster current;

    InCluster(CurrentCluster current) {
      this.current = current;
    }

    @ActivateRequestContext
    void run(UUID cluster, Runnable work) {
      current.assign(cluster);
      work.run();
    }
  }

  private static final class ClustersUnread extends RuntimeException {
    private static final long serialVersionUID = 1L;

    ClustersUnread(SQLException cause) {
      super(cause);
    }
  }
}
