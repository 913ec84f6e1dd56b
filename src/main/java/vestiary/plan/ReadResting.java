package vestiary.plan;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import vestiary.cluster.ReadCluster;
import vestiary.pool.Astray;
import vestiary.pool.PlannedWear;
import vestiary.pool.ReadPool;
import vestiary.pool.ReadTaken;
import vestiary.pool.SetAside;
import vestiary.pool.Taken;

/** What lies away from home by the plans that hold, and by when it is needed. */
@ApplicationScoped
public class ReadResting {

  /** Further ahead nobody has planned. */
  private static final Duration AHEAD = Duration.ofDays(31);

  private final ReadTaken taken;
  private final ReadPool pool;
  private final ReadCluster cluster;
  private final Clock clock;

  ReadResting(ReadTaken taken, ReadPool pool, ReadCluster cluster, Clock clock) {
    this.taken = taken;
    this.pool = pool;
    this.cluster = cluster;
    this.clock = clock;
  }

  /**
   * Pieces of one set, or one piece, that lie away from home.
   *
   * @param before when any of them is needed next, if that is known
   * @param now whether they lie there at this moment
   */
  record Found(PlanResult.Resting resting, Optional<Instant> before, boolean now) {}

  /** What is still to be taken home when a date is over, in words, by code. */
  @Transactional
  public List<RestingView> views(LocalDate last) {
    RestingWords words =
        new RestingWords(
            cluster.churches(), pool.pieces(clock.instant()), cluster.cluster().zone());
    return after(last).stream()
        .map(one -> words.view(one.resting(), one.before(), one.now()))
        .toList();
  }

  /** What lies away from home when a date is over, by code. */
  @Transactional
  List<Found> after(LocalDate last) {
    Instant until = PlannedDays.of(last, last, cluster.cluster().zone()).until();
    Set<Astray> now = new HashSet<>(taken.awayFromHome(clock.instant()));
    Taken ahead = taken.between(until, until.plus(AHEAD));
    Map<String, List<Astray>> together = new TreeMap<>();
    taken
        .awayFromHome(until)
        .forEach(
            one ->
                together
                    .computeIfAbsent(
                        (one.set().isEmpty() ? one.piece() : one.set()) + " " + one.church(),
                        unknown -> new ArrayList<>())
                    .add(one));
    return together.values().stream().map(some -> found(some, ahead, now)).toList();
  }

  private static Found found(List<Astray> some, Taken ahead, Set<Astray> now) {
    List<String> codes = some.stream().map(Astray::piece).toList();
    Optional<Instant> before =
        Stream.concat(
                ahead.planned().stream()
                    .filter(one -> codes.contains(one.piece()))
                    .map(PlannedWear::from),
                ahead.setAside().stream()
                    .filter(one -> codes.contains(one.piece()))
                    .map(SetAside::from))
            .sorted()
            .findFirst();
    Astray first = some.get(0);
    return new Found(
        new PlanResult.Resting(codes, first.church().value(), first.home().value(), List.of()),
        before,
        now.containsAll(some));
  }
}
