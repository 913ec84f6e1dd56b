package vestiary.regrouping;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.UUID;
import vestiary.scenario.OwnerDatabase;

/** What a cluster keeps of others that were merged into it. */
@ApplicationScoped
public class Regroupings {

  private final OwnerDatabase owner;

  Regroupings(OwnerDatabase owner) {
    this.owner = owner;
  }

  /** As if one had ended in it long ago. */
  public void leaveTraces(UUID cluster) {
    try (Connection connection = owner.getConnection()) {
      Side gone =
          new Side(UUID.randomUUID(), "Gone", "gone", "UTC", "general", false, LocalDate.EPOCH);
      Noted.keep(new Questions(connection), cluster, "merged", gone, "gone.zip");
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }
}
