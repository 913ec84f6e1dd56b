package vestiary.cluster;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.access.CurrentCluster;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.proper.BindingPropers;
import vestiary.proper.EnteredProper;
import vestiary.proper.ReadPropers;
import vestiary.vesting.ChurchId;

/** What the current cluster is and where its churches lie. */
@ApplicationScoped
@Transactional
public class ReadCluster {

  private final CurrentCluster current;
  private final ClusterRows clusters;
  private final ParishRows parishes;
  private final ChurchRows churches;
  private final JourneyRows journeys;
  private final ReadPropers propers;

  ReadCluster(
      CurrentCluster current,
      ClusterRows clusters,
      ParishRows parishes,
      ChurchRows churches,
      JourneyRows journeys,
      ReadPropers propers) {
    this.current = current;
    this.clusters = clusters;
    this.parishes = parishes;
    this.churches = churches;
    this.journeys = journeys;
    this.propers = propers;
  }

  public Cluster cluster() {
    return clusters.findById(current.id()).toCluster(BindingPropers.all(propers.all()));
  }

  /** Whether somebody has said what the cluster is called and which calendar it keeps. */
  public boolean isSetUp() {
    return clusters.findById(current.id()).setUp;
  }

  /** The Monday of the week that the demo was last moved to; empty in a real cluster. */
  public Optional<LocalDate> findDemoMonday() {
    return Optional.ofNullable(clusters.findById(current.id()).demoMonday);
  }

  /** All churches, in the order in which people list them. */
  public List<Church> churches() {
    Map<UUID, String> names =
        parishes.streamAll().collect(Collectors.toMap(p -> p.id, p -> p.name));
    List<EnteredProper> kept = propers.all();
    return churches.inOrder().stream().map(c -> c.toChurch(names.get(c.parishId), kept)).toList();
  }

  /** How many churches there are. */
  public int countChurches() {
    return (int) churches.count();
  }

  /** The church with this short name, or empty. */
  public Optional<Church> findChurch(String slug) {
    return churches
        .findBySlug(slug)
        .map(c -> c.toChurch(parishes.findById(c.parishId).name, propers.all()));
  }

  /**
   * The church that an address names.
   *
   * @throws Refused if there is none
   */
  public Church getChurch(String slug) {
    return findChurch(slug).orElseThrow(() -> new Refused(new Refusal.NotThere("church", slug)));
  }

  /** Journeys that somebody has timed, and estimates for the others where coordinates are known. */
  public List<Journey> journeys() {
    List<ChurchRow> all = churches.inOrder();
    Map<UUID, Map<UUID, Integer>> timed = new HashMap<>();
    journeys
        .streamAll()
        .forEach(j -> timed.computeIfAbsent(j.fromId, k -> new HashMap<>()).put(j.toId, j.minutes));
    List<Journey> result = new ArrayList<>();
    for (ChurchRow from : all) {
      for (ChurchRow to : all) {
        find(from, to, timed).ifPresent(result::add);
      }
    }
    return result;
  }

  private static Optional<Journey> find(
      ChurchRow from, ChurchRow to, Map<UUID, Map<UUID, Integer>> timed) {
    if (from.id.equals(to.id)) {
      return Optional.empty();
    }
    Integer minutes = timed.getOrDefault(from.id, Map.of()).get(to.id);
    if (minutes != null) {
      return Optional.of(journey(from, to, minutes, false));
    }
    return from.hasCoordinates() && to.hasCoordinates()
        ? Optional.of(journey(from, to, JourneyEstimate.minutes(from, to), true))
        : Optional.empty();
  }

  private static Journey journey(ChurchRow from, ChurchRow to, int minutes, boolean estimated) {
    return new Journey(new ChurchId(from.id), new ChurchId(to.id), minutes, estimated);
  }
}
