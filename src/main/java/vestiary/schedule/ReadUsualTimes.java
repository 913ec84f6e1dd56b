package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.cluster.ReadCluster;
import vestiary.vesting.MassId;

/** What recurs, for whoever tells people where a week differs from it. */
@ApplicationScoped
@Transactional
public class ReadUsualTimes {

  private final MassRows masses;
  private final PatternRows patterns;
  private final ReadCluster cluster;

  ReadUsualTimes(MassRows masses, PatternRows patterns, ReadCluster cluster) {
    this.masses = masses;
    this.patterns = patterns;
    this.cluster = cluster;
  }

  /**
   * Of every Mass that a pattern yielded for these dates, changed by hand or not.
   *
   * @param first first date in the cluster's zone, included
   * @param last last date, included
   */
  public List<UsualTime> between(LocalDate first, LocalDate last) {
    ZoneId zone = cluster.cluster().zone();
    Map<UUID, PatternRow> byId =
        patterns.listAll().stream().collect(Collectors.toMap(row -> row.id, Function.identity()));
    return masses
        .list("patternDate >= ?1 and patternDate <= ?2 order by patternDate, id", first, last)
        .stream()
        .filter(row -> byId.containsKey(row.patternId))
        .map(row -> usual(row, byId.get(row.patternId), zone))
        .toList();
  }

  private static UsualTime usual(MassRow row, PatternRow pattern, ZoneId zone) {
    return new UsualTime(
        new MassId(row.id),
        pattern.churchId,
        row.patternDate.atTime(pattern.at).atZone(zone),
        row.cancelled);
  }

  /** What begins to recur after that date, the first first. */
  public List<UsualTime.Begins> beginningAfter(LocalDate date) {
    return patterns.list("starts > ?1 order by starts, id", date).stream()
        .map(row -> new UsualTime.Begins(row.churchId, row.starts))
        .toList();
  }
}
