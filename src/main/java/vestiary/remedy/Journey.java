package vestiary.remedy;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import vestiary.pool.CarriedPiece;
import vestiary.vesting.ChurchId;

/**
 * What rides together.
 *
 * @param ready from when all of it can be taken; none if it lies there from the start
 * @param carrier who travels that way anyway; empty if the journey is made for it
 */
record Journey(
    List<String> pieces,
    ChurchId from,
    ChurchId to,
    List<Instant> ready,
    Instant leaveBy,
    Instant arriveBy,
    String carrier) {

  /** By the hour of leaving. */
  static List<Journey> of(List<CarriedPiece> carried) {
    Map<List<Object>, List<CarriedPiece>> together = new LinkedHashMap<>();
    carried.forEach(
        one ->
            together
                .computeIfAbsent(
                    List.of(one.from(), one.to(), one.leaveBy(), one.arriveBy(), one.carrier()),
                    unknown -> new ArrayList<>())
                .add(one));
    return together.values().stream().map(Journey::one).toList();
  }

  private static Journey one(List<CarriedPiece> pieces) {
    CarriedPiece first = pieces.get(0);
    return new Journey(
        pieces.stream().map(CarriedPiece::piece).toList(),
        first.from(),
        first.to(),
        pieces.stream()
            .flatMap(one -> one.ready().stream())
            .reduce((a, b) -> a.isAfter(b) ? a : b)
            .stream()
            .toList(),
        first.leaveBy(),
        first.arriveBy(),
        first.carrier());
  }
}
