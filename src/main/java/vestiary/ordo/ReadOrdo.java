package vestiary.ordo;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import vestiary.cluster.Church;
import vestiary.cluster.ChurchCalendars;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Puts the ordo of a year together: one calendar a church, each day asked for once. */
@ApplicationScoped
class ReadOrdo {

  private final ReadCluster cluster;
  private final ChurchCalendars calendars;

  ReadOrdo(ReadCluster cluster, ChurchCalendars calendars) {
    this.cluster = cluster;
    this.calendars = calendars;
  }

  /**
   * The ordo of the cluster or of one church.
   *
   * @param church its short name; {@code null} or blank for the whole cluster
   * @throws Refused if there is no such church
   */
  Ordo read(LiturgicalYear year, String church) {
    Cluster whole = cluster.cluster();
    List<Church> churches = cluster.churches();
    YearDays plain = YearDays.of(year, calendars.plain(whole));
    if (church == null || church.isBlank()) {
      List<Ordo.ChurchDays> others =
          churches.stream().map(c -> new Ordo.ChurchDays(c, days(year, whole, c))).toList();
      return new Ordo(year, whole, churches, List.of(), plain, plain, others);
    }
    Church one = get(churches, church.strip());
    YearDays days = days(year, whole, one);
    return new Ordo(year, whole, churches, List.of(one), plain, days, List.of());
  }

  private YearDays days(LiturgicalYear year, Cluster whole, Church church) {
    return YearDays.of(year, calendars.of(whole, church));
  }

  private static Church get(List<Church> churches, String slug) {
    return churches.stream()
        .filter(c -> c.slug().equals(slug))
        .findFirst()
        .orElseThrow(() -> new Refused(new Refusal.NotThere("church", slug)));
  }
}
