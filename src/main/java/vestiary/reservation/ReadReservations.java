package vestiary.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.cluster.ReadCluster;
import vestiary.pool.KeepHeld;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;

/** What is set aside in the cluster. */
@ApplicationScoped
@Transactional
class ReadReservations {

  private final ReservationRows rows;
  private final KeepHeld held;
  private final ReadMasses masses;
  private final ReadCluster cluster;
  private final MakerNames makers;

  ReadReservations(
      ReservationRows rows,
      KeepHeld held,
      ReadMasses masses,
      ReadCluster cluster,
      MakerNames makers) {
    this.rows = rows;
    this.held = held;
    this.masses = masses;
    this.cluster = cluster;
    this.makers = makers;
  }

  /** What is held or out on some of these dates, both included; by start, church, then code. */
  List<Reservation> between(LocalDate first, LocalDate last) {
    ZoneId zone = cluster.cluster().zone();
    Map<UUID, List<KeepHeld.Part>> parts =
        held
            .between(
                first.atStartOfDay(zone).toInstant(),
                last.plusDays(1).atStartOfDay(zone).toInstant())
            .stream()
            .collect(Collectors.groupingBy(KeepHeld.Part::reservation));
    if (parts.isEmpty()) {
      return List.of();
    }
    List<ReservationRow> found = rows.list("id in ?1 and state in ('held', 'out')", parts.keySet());
    return all(found, parts);
  }

  /** What is held or out for one Mass, by code. */
  List<Reservation> forMass(String mass) {
    DatedMass found = masses.get(mass);
    List<ReservationRow> standing = rows.standingFor(List.of(found.id()));
    Map<UUID, List<KeepHeld.Part>> parts = new HashMap<>();
    standing.forEach(row -> parts.put(row.id, held.of(row.id)));
    return all(standing, parts);
  }

  /**
   * The one that an address names, whatever has become of it.
   *
   * @throws vestiary.problem.Refused if there is none
   */
  Reservation get(String id) {
    ReservationRow row = rows.get(id);
    return all(List.of(row), Map.of(row.id, held.of(row.id))).get(0);
  }

  private List<Reservation> all(List<ReservationRow> found, Map<UUID, List<KeepHeld.Part>> parts) {
    Map<UUID, String> codes = held.codes();
    MakerNames.Names names = makers.all();
    Map<UUID, DatedMass> known = new HashMap<>();
    return found.stream()
        .map(
            row ->
                reservation(
                    row,
                    parts.get(row.id),
                    codes.get(row.thing()),
                    names.of(row.madeBy),
                    known.computeIfAbsent(row.massId, id -> masses.get(id.toString()))))
        .sorted(
            Comparator.comparing((Reservation one) -> one.mass().start().toInstant())
                .thenComparing(one -> one.mass().church().name())
                .thenComparing(Reservation::code))
        .toList();
  }

  private static Reservation reservation(
      ReservationRow row, List<KeepHeld.Part> parts, String code, String by, DatedMass mass) {
    Instant from =
        parts.stream()
            .map(KeepHeld.Part::from)
            .min(Comparator.naturalOrder())
            .orElseGet(() -> mass.start().toInstant());
    Instant until =
        parts.stream()
            .map(KeepHeld.Part::until)
            .max(Comparator.naturalOrder())
            .orElseGet(() -> mass.end().toInstant());
    List<String> kept =
        parts.stream()
            .filter(KeepHeld.Part::standing)
            .map(KeepHeld.Part::piece)
            .distinct()
            .toList();
    // What went out has its hold behind it, which stands no longer.
    List<String> lost =
        parts.stream()
            .map(KeepHeld.Part::piece)
            .filter(piece -> !kept.contains(piece))
            .distinct()
            .toList();
    boolean moved =
        !row.churchId.equals(mass.church().id().value())
            || from.isAfter(mass.start().toInstant())
            || until.isBefore(mass.end().toInstant());
    return new Reservation(
        row.id,
        code,
        row.setId != null,
        mass,
        kept,
        lost,
        moved,
        from,
        until,
        row.toState(),
        by,
        row.madeAt);
  }
}
