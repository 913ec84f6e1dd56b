package vestiary.history;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;

/** How much of the history is old; to delete it is left to the database (migration V034). */
@ApplicationScoped
public class OldHistory {

  private final AuditRows rows;

  OldHistory(AuditRows rows) {
    this.rows = rows;
  }

  /** How many changes were made before that moment. */
  public long count(Instant before) {
    return rows.count("at < ?1", before);
  }
}
