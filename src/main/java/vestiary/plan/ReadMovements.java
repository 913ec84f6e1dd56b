package vestiary.plan;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import vestiary.cluster.Church;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;
import vestiary.pool.CarriedPiece;
import vestiary.pool.ReadTaken;
import vestiary.vesting.ChurchId;

/** The journeys of the plans that hold. */
@ApplicationScoped
class ReadMovements {

  private final ReadTaken taken;
  private final ReadCluster cluster;

  ReadMovements(ReadTaken taken, ReadCluster cluster) {
    this.taken = taken;
    this.cluster = cluster;
  }

  /** Journeys with the cluster they are made in; each a list of pieces that ride together. */
  record Journeys(Cluster cluster, Map<ChurchId, Church> churches, List<PlanResult.Trip> trips) {}

  private record Together(CarriedPiece first) {
    private Together(CarriedPiece first) {
      this.first =
          new CarriedPiece(
              "",
              first.from(),
              first.to(),
              List.of(),
              first.leaveBy(),
              first.arriveBy(),
              first.carrier(),
              false);
    }
  }

  /** Those that arrive on these dates, both included, by the hour of leaving. */
  @Transactional
  Journeys between(LocalDate first, LocalDate last) {
    Cluster here = cluster.cluster();
    Map<ChurchId, Church> churches = new LinkedHashMap<>();
    cluster.churches().forEach(church -> churches.put(church.id(), church));
    PlannedDays days = PlannedDays.of(first, last, here.zone());
    Map<Together, List<CarriedPiece>> together = new LinkedHashMap<>();
    taken
        .carriedBetween(days.from(), days.until())
        .forEach(
            one ->
                together.computeIfAbsent(new Together(one), unknown -> new ArrayList<>()).add(one));
    return new Journeys(here, churches, together.values().stream().map(this::trip).toList());
  }

  private PlanResult.Trip trip(List<CarriedPiece> pieces) {
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
