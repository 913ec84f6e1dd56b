package vestiary.allocation.planner;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import vestiary.allocation.plan.Movement;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Piece;

/**
 * Puts journeys between the same churches together whose hours agree, in the fewest carriages that
 * way: the carriage leaves as late as the first of them must, with all that is ready by then.
 */
final class Merging {

  private Merging() {}

  /** The same movements in fewer journeys, by hour of leaving, then churches. */
  static List<Movement> of(List<Movement> movements) {
    Map<ChurchId, Map<ChurchId, List<Movement>>> ways = new TreeMap<>();
    List<Movement> merged = new ArrayList<>();
    for (Movement one : movements) {
      if (one.isCarriage()) {
        ways.computeIfAbsent(one.from(), unknown -> new TreeMap<>())
            .computeIfAbsent(one.to(), unknown -> new ArrayList<>())
            .add(one);
      } else {
        merged.add(one);
      }
    }
    ways.values().forEach(to -> to.values().forEach(own -> merge(own, merged)));
    return merged.stream().sorted(BY_HOUR).toList();
  }

  /** By hour of leaving, then churches. */
  static final Comparator<Movement> BY_HOUR =
      Comparator.comparing(Movement::leaveBy)
          .thenComparing(Movement::from)
          .thenComparing(Movement::to);

  private static void merge(List<Movement> own, List<Movement> merged) {
    List<Movement> together = new ArrayList<>();
    Instant leaves = Instant.MIN;
    for (Movement one : own.stream().sorted(BY_HOUR).toList()) {
      if (!together.isEmpty() && one.ready().isAfter(leaves)) {
        merged.add(joined(together));
        together.clear();
      }
      leaves = together.isEmpty() ? one.leaveBy() : leaves;
      together.add(one);
    }
    merged.add(joined(together));
  }

  private static Movement joined(List<Movement> together) {
    Movement first = together.get(0);
    Duration time = Duration.between(first.leaveBy(), first.arriveBy());
    Instant ready =
        together.stream().map(Movement::ready).max(Comparator.naturalOrder()).orElseThrow();
    List<Piece> pieces =
        together.stream()
            .flatMap(one -> one.pieces().stream())
            .distinct()
            .sorted(Comparator.comparing(Piece::code))
            .toList();
    return new Movement(
        pieces,
        first.from(),
        first.to(),
        ready,
        first.leaveBy(),
        first.leaveBy().plus(time),
        "",
        together.stream().anyMatch(Movement::onAsking));
  }
}
