package vestiary.reservation;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import vestiary.schedule.DatedMass;

/**
 * A set or piece set aside for a Mass.
 *
 * @param code of the set or piece
 * @param isSet whether it is a set
 * @param mass even if it is cancelled by now
 * @param pieces codes of those that are kept by it
 * @param lost codes of those that care or a remedy has taken from it
 * @param moved whether the Mass is elsewhere or at another hour since
 * @param from first moment
 * @param until half-open end; both are those of the Mass where nothing is kept any more
 * @param by what whoever made it is called
 */
record Reservation(
    UUID id,
    String code,
    boolean isSet,
    DatedMass mass,
    List<String> pieces,
    List<String> lost,
    boolean moved,
    Instant from,
    Instant until,
    ReservationState state,
    String by,
    Instant madeAt) {

  Reservation {
    pieces = List.copyOf(pieces);
    lost = List.copyOf(lost);
  }

  boolean stands() {
    return state.stands();
  }
}
