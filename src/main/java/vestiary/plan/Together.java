package vestiary.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.pool.CarriedPiece;

/** Puts pieces that ride together into one trip. */
final class Together {

  private Together() {}

  /** The trips, in the order of their first pieces. */
  static List<PlanResult.Trip> trips(List<CarriedPiece> pieces) {
    Map<UUID, List<CarriedPiece>> together =
        pieces.stream()
            .collect(
                Collectors.groupingBy(CarriedPiece::trip, LinkedHashMap::new, Collectors.toList()));
    return together.values().stream().map(Together::trip).toList();
  }

  private static PlanResult.Trip trip(List<CarriedPiece> pieces) {
    CarriedPiece one = pieces.get(0);
    return new PlanResult.Trip(
        pieces.stream().map(CarriedPiece::piece).toList(),
        one.from().value(),
        one.to().value(),
        pieces.stream()
            .flatMap(piece -> piece.ready().stream())
            .sorted()
            .reduce((a, b) -> b)
            .stream()
            .toList(),
        one.leaveBy(),
        one.arriveBy(),
        one.carrier(),
        pieces.stream().anyMatch(CarriedPiece::onAsking));
  }
}
