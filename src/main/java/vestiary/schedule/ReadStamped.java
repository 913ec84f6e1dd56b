package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.cluster.ReadCluster;

/** Masses for calendars, those that were cancelled included, with how often each was changed. */
@ApplicationScoped
@Transactional
public class ReadStamped {

  /** UUIDv7 begins with the milliseconds since 1970 (RFC 9562, 5.7). */
  private static final int BELOW_TIME = 16;

  private final ReadMasses masses;
  private final MassRows rows;
  private final MassStampRows stamps;
  private final ReadCluster cluster;

  ReadStamped(ReadMasses masses, MassRows rows, MassStampRows stamps, ReadCluster cluster) {
    this.masses = masses;
    this.rows = rows;
    this.stamps = stamps;
    this.cluster = cluster;
  }

  /** A Mass and its stamp. */
  public record Stamped(DatedMass mass, MassStamp stamp) {}

  /**
   * Those that begin in the span, by start.
   *
   * @param first first date in the cluster's zone, included
   * @param last last date, included
   */
  public List<Stamped> between(LocalDate first, LocalDate last) {
    List<DatedMass> standing = masses.between(first, last);
    ZoneId zone = cluster.cluster().zone();
    Stream<DatedMass> cancelled =
        rows
            .list(
                "cancelled and starts >= ?1 and starts < ?2 order by starts, id",
                first.atStartOfDay(zone).toInstant(),
                last.plusDays(1).atStartOfDay(zone).toInstant())
            .stream()
            .map(masses::dated);
    Map<UUID, MassStampRow> changed =
        stamps.listAll().stream().collect(Collectors.toMap(row -> row.id, Function.identity()));
    return Stream.concat(standing.stream(), cancelled)
        .sorted(
            java.util.Comparator.comparing((DatedMass mass) -> mass.start().toInstant())
                .thenComparing(mass -> mass.id().value()))
        .map(mass -> new Stamped(mass, stamp(mass.id().value(), changed)))
        .toList();
  }

  private static MassStamp stamp(UUID mass, Map<UUID, MassStampRow> changed) {
    MassStampRow row = changed.get(mass);
    return row == null
        ? new MassStamp(0, Instant.ofEpochMilli(mass.getMostSignificantBits() >>> BELOW_TIME))
        : new MassStamp(row.sequence, row.changedAt);
  }
}
