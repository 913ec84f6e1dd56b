package vestiary.allocation.plan;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Piece;

/**
 * Pieces carried together from one church to another.
 *
 * @param pieces in order of code, one or more
 * @param ready from when they can be taken; {@link Instant#MIN} if they lie there from the start
 * @param leaveBy the last moment to leave
 * @param arriveBy when they must be there
 * @param carrier who travels that way anyway; empty if the journey is made for them, which is a
 *     carriage
 * @param onAsking whether an owner must be asked first
 */
public record Movement(
    List<Piece> pieces,
    ChurchId from,
    ChurchId to,
    Instant ready,
    Instant leaveBy,
    Instant arriveBy,
    String carrier,
    boolean onAsking) {

  public Movement {
    pieces = List.copyOf(pieces);
    Objects.requireNonNull(carrier, "carrier");
    if (pieces.isEmpty() || ready.isAfter(leaveBy) || leaveBy.isAfter(arriveBy)) {
      throw new IllegalArgumentException(
          "Pieces are ready, leave and arrive in that order, not "
              + String.join(", ", ready + "", leaveBy + "", arriveBy + ""));
    }
  }

  /** Whether it is made on that ride. */
  public boolean isBy(Ride ride) {
    return ride.who().equals(carrier)
        && ride.from().equals(from)
        && ride.to().equals(to)
        && ride.departs().equals(leaveBy)
        && ride.arrives().equals(arriveBy);
  }

  /** Whether both are made on one ride. */
  public boolean isTogetherWith(Movement other) {
    return !isCarriage()
        && other.carrier.equals(carrier)
        && other.from.equals(from)
        && other.to.equals(to)
        && other.leaveBy.equals(leaveBy)
        && other.arriveBy.equals(arriveBy);
  }

  /** The same journey with more pieces on it, for which nobody need be asked. */
  public Movement withMore(List<Piece> more) {
    List<Piece> all =
        Stream.concat(pieces.stream(), more.stream())
            .sorted(Comparator.comparing(Piece::code))
            .toList();
    return new Movement(all, from, to, ready, leaveBy, arriveBy, carrier, onAsking);
  }

  /** Whether the journey is made for the vestments alone. */
  public boolean isCarriage() {
    return carrier.isEmpty();
  }
}
