package vestiary.plan;

import java.util.Collection;
import vestiary.allocation.plan.Ride;
import vestiary.allocation.plan.Situation;
import vestiary.asking.AskedTrip;

/** The planner's question with what people have answered: who will not carry drives alone. */
final class Answered {

  private Answered() {}

  /**
   * The question without these.
   *
   * @param declined trips that those who drive anyway will not carry for
   */
  static Situation in(Situation situation, Collection<AskedTrip> declined) {
    return declined.isEmpty()
        ? situation
        : situation.withRides(
            situation.rides().stream().filter(ride -> !isDeclined(ride, declined)).toList());
  }

  private static boolean isDeclined(Ride ride, Collection<AskedTrip> declined) {
    return declined.stream()
        .anyMatch(
            trip ->
                trip.rider().equals(ride.who())
                    && trip.from().equals(ride.from())
                    && trip.to().equals(ride.to())
                    && trip.leaveBy().equals(ride.departs()));
  }
}
