package vestiary.allocation.planner;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import vestiary.allocation.plan.Movement;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.Resting;
import vestiary.allocation.plan.Ride;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.Piece;

/**
 * Sends home whatever lies elsewhere after all it does, with the first who drives straight there
 * anyway. For what nobody takes no journey is made: it goes home when somebody passes; common
 * practice, no source.
 */
final class WaysHome {

  private static final Comparator<Ride> BY_HOUR =
      Comparator.comparing(Ride::departs)
          .thenComparing(Ride::arrives)
          .thenComparing(Ride::from)
          .thenComparing(Ride::to)
          .thenComparing(Ride::who);

  private final Situation situation;
  private final Map<Ride, List<Piece>> taken = new TreeMap<>(BY_HOUR);

  private WaysHome(Situation situation) {
    this.situation = situation;
  }

  /** The same plan with the ways home in it. */
  static Plan in(Plan plan, Situation situation) {
    WaysHome ways = new WaysHome(situation);
    Resting.awayFromHome(plan, situation).forEach(ways::sendHome);
    return plan.withWaysHome(
        ways.taken.entrySet().stream().map(e -> movement(e.getKey(), e.getValue())).toList());
  }

  private void sendHome(Resting resting) {
    situation.rides().stream()
        .filter(ride -> ride.from().equals(resting.church()) && ride.to().equals(resting.home()))
        .filter(ride -> !ride.departs().isBefore(resting.since()))
        .min(BY_HOUR)
        .ifPresent(
            ride ->
                taken.computeIfAbsent(ride, unknown -> new ArrayList<>()).addAll(resting.pieces()));
  }

  private static Movement movement(Ride ride, List<Piece> pieces) {
    return new Movement(
        pieces.stream().sorted(Comparator.comparing(Piece::code)).toList(),
        ride.from(),
        ride.to(),
        ride.departs(),
        ride.departs(),
        ride.arrives(),
        ride.who(),
        false);
  }
}
