package vestiary.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.pool.KeepHeld;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;

/** What is asked for in the cluster. */
@ApplicationScoped
@Transactional
class ReadWishes {

  /** What was asked longer ago is for a Mass that is over. */
  private static final Duration REMEMBERED = Duration.ofDays(400);

  private final WishRows rows;
  private final KeepHeld held;
  private final ReadMasses masses;
  private final ReadCluster cluster;
  private final MakerNames makers;
  private final Clock clock;

  ReadWishes(
      WishRows rows,
      KeepHeld held,
      ReadMasses masses,
      ReadCluster cluster,
      MakerNames makers,
      Clock clock) {
    this.rows = rows;
    this.held = held;
    this.masses = masses;
    this.cluster = cluster;
    this.makers = makers;
    this.clock = clock;
  }

  /** Those for Masses that are not over, the first asked first; what was taken back left out. */
  List<Wish> all() {
    Instant now = clock.instant();
    return wishes(rows.since(now.minus(REMEMBERED))).stream()
        .filter(one -> one.mass().end().toInstant().isAfter(now))
        .toList();
  }

  /**
   * The one that an address names.
   *
   * @throws vestiary.problem.Refused if there is none
   */
  Wish get(String id) {
    return wishes(List.of(rows.get(id))).get(0);
  }

  /** One that is there. */
  Wish get(UUID id) {
    return wishes(List.of(rows.findById(id))).get(0);
  }

  private List<Wish> wishes(List<WishRow> found) {
    Map<UUID, String> codes = held.codes();
    MakerNames.Names names = makers.all();
    Map<UUID, Church> churches =
        cluster.churches().stream()
            .collect(Collectors.toMap(one -> one.id().value(), Function.identity()));
    Map<UUID, DatedMass> known = new HashMap<>();
    return found.stream()
        .map(
            row ->
                new Wish(
                    row.id,
                    codes.get(row.thing()),
                    row.setId != null,
                    known.computeIfAbsent(row.massId, id -> masses.get(id.toString())),
                    churches.get(row.keeperId),
                    row.toState(),
                    row.note,
                    names.of(row.askedBy),
                    row.askedBy,
                    row.askedAt,
                    row.answer,
                    row.answeredAt == null ? "" : names.of(row.answeredBy),
                    Stream.ofNullable(row.toldAt).toList()))
        .toList();
  }
}
