package vestiary.feed;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;
import vestiary.plan.ReadMovements;
import vestiary.plan.TripWords;
import vestiary.pool.PooledPiece;
import vestiary.pool.ReadPool;
import vestiary.schedule.DatedMass;
import vestiary.telling.Tongue;

/** The journeys of one person's calendar, counted on where they have changed. */
@ApplicationScoped
@Transactional
class OwnJourneys {

  private final ReadCluster cluster;
  private final ReadMovements movements;
  private final ReadPool pool;
  private final StampEvents stamps;

  OwnJourneys(ReadCluster cluster, ReadMovements movements, ReadPool pool, StampEvents stamps) {
    this.cluster = cluster;
    this.movements = movements;
    this.pool = pool;
    this.stamps = stamps;
  }

  /** Between Masses of one person, given by start and without cancelled ones. */
  List<CalendarEvent> drives(List<DatedMass> masses, Tongue tongue) {
    return stamps.stamp(
        new JourneyEvents(cluster.cluster(), tongue).drives(masses, cluster.journeys()));
  }

  /**
   * Of what leaves these churches, comes to them or belongs to them.
   *
   * @param last last date, included
   */
  List<CalendarEvent> rides(Set<UUID> churches, LocalDate first, LocalDate last, Tongue tongue) {
    if (churches.isEmpty()) {
      return List.of();
    }
    Cluster here = cluster.cluster();
    List<PooledPiece> pieces = pool.pieces(first.atStartOfDay(here.zone()).toInstant());
    Set<String> theirs =
        pieces.stream()
            .filter(piece -> churches.contains(piece.home().value()))
            .map(PooledPiece::code)
            .collect(Collectors.toSet());
    return stamps.stamp(
        new JourneyEvents(here, tongue)
            .rides(
                movements.between(first, last).trips(),
                churches,
                theirs,
                new TripWords(cluster.churches(), pieces, here.zone())));
  }

  /** Both, by start. */
  static List<CalendarEvent> together(Stream<CalendarEvent> events) {
    return events
        .sorted(
            Comparator.comparing((CalendarEvent event) -> event.start().toInstant())
                .thenComparing(CalendarEvent::uid))
        .toList();
  }
}
