package vestiary.plan;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import vestiary.cluster.Church;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;
import vestiary.pool.ReadTaken;
import vestiary.vesting.ChurchId;

/** The journeys of the plans that hold. */
@ApplicationScoped
public class ReadMovements {

  private final ReadTaken taken;
  private final ReadCluster cluster;

  ReadMovements(ReadTaken taken, ReadCluster cluster) {
    this.taken = taken;
    this.cluster = cluster;
  }

  /** Journeys with the cluster they are made in; each a list of pieces that ride together. */
  public record Journeys(
      Cluster cluster, Map<ChurchId, Church> churches, List<PlanResult.Trip> trips) {}

  /** Those that arrive on these dates, both included, by the hour of leaving. */
  @Transactional
  public Journeys between(LocalDate first, LocalDate last) {
    Cluster here = cluster.cluster();
    PlannedDays days = PlannedDays.of(first, last, here.zone());
    return new Journeys(
        here, churches(), Together.trips(taken.carriedBetween(days.from(), days.until())));
  }

  /** The one trip of that id; none if no plan that holds has it. */
  @Transactional
  public Journeys together(UUID trip) {
    return new Journeys(cluster.cluster(), churches(), Together.trips(taken.carriedOn(trip)));
  }

  private Map<ChurchId, Church> churches() {
    Map<ChurchId, Church> churches = new LinkedHashMap<>();
    cluster.churches().forEach(church -> churches.put(church.id(), church));
    return churches;
  }
}
