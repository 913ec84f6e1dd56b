package vestiary.cluster;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;

@ApplicationScoped
class JourneyRows implements PanacheRepositoryBase<JourneyRow, UUID> {

  void keep(UUID from, UUID to, int minutes) {
    JourneyRow row =
        find("fromId = ?1 and toId = ?2", from, to)
            .firstResultOptional()
            .orElseGet(JourneyRow::new);
    row.fromId = from;
    row.toId = to;
    row.minutes = minutes;
    persist(row);
  }

  /** The minutes that somebody timed, or 0 if nobody did. */
  int minutes(UUID from, UUID to) {
    return find("fromId = ?1 and toId = ?2", from, to)
        .firstResultOptional()
        .map(row -> row.minutes)
        .orElse(0);
  }

  void forget(UUID from, UUID to) {
    delete("fromId = ?1 and toId = ?2", from, to);
  }
}
