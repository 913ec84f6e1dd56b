package vestiary.pool;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.UUID;
import vestiary.vesting.ChurchId;

/**
 * Tells which pieces ride together. It follows from the trip itself, so that a trip which another
 * plan has as well stays the one that somebody was asked for.
 */
public final class TripId {

  private TripId() {}

  /** The id of whatever rides from there to there at that time with that carrier. */
  public static UUID of(
      ChurchId from, ChurchId to, Instant leaveBy, Instant arriveBy, String carrier) {
    String trip =
        String.join(
            "|",
            from.value().toString(),
            to.value().toString(),
            leaveBy.toString(),
            arriveBy.toString(),
            carrier);
    return UUID.nameUUIDFromBytes(trip.getBytes(StandardCharsets.UTF_8));
  }
}
