package vestiary.asking;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class AskingRows implements PanacheRepositoryBase<AskingRow, UUID> {

  private static final String OPEN = " and state in ('asked', 'accepted', 'done')";

  /** Everybody who was asked for a trip, the first asked first. */
  List<AskingRow> ofTrip(UUID trip) {
    return list("tripId = ?1 order by askedAt, id", trip);
  }

  /** The same of several trips. */
  List<AskingRow> ofTrips(Collection<UUID> trips) {
    return trips.isEmpty() ? List.of() : list("tripId in ?1 order by askedAt, id", trips);
  }

  /** The one whose trip it is or may become; waits until nobody else changes it. */
  Optional<AskingRow> findOpenLocked(UUID trip) {
    return find("tripId = ?1" + OPEN, trip)
        .withLock(LockModeType.PESSIMISTIC_WRITE)
        .firstResultOptional();
  }

  /** Askings for trips that leave in the half-open span. */
  List<AskingRow> leavingBetween(Instant from, Instant until) {
    return list("leaveBy >= ?1 and leaveBy < ?2 order by leaveBy, id", from, until);
  }
}
