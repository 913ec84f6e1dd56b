package vestiary.pool;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import vestiary.vesting.ChurchId;

/**
 * One piece's carriage from one church to another, as an applied plan has it.
 *
 * @param piece its code
 * @param ready from when it can be taken; none if it lies there from the start
 * @param leaveBy last moment to leave
 * @param arriveBy when it must be there
 * @param carrier who travels that way anyway; empty if the journey is made for it
 * @param onAsking whether an owner must be asked first
 */
public record CarriedPiece(
    String piece,
    ChurchId from,
    ChurchId to,
    List<Instant> ready,
    Instant leaveBy,
    Instant arriveBy,
    String carrier,
    boolean onAsking) {

  public CarriedPiece {
    ready = List.copyOf(ready);
  }

  /** The same for all pieces that ride together. */
  public UUID trip() {
    return TripId.of(from, to, leaveBy, arriveBy, carrier);
  }
}
