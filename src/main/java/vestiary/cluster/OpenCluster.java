package vestiary.cluster;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import vestiary.access.CurrentCluster;
import vestiary.calendar.CalendarSettings;

/** Opens a cluster with nothing in it but the usual settings. */
@ApplicationScoped
public class OpenCluster {

  private final ClusterRows clusters;
  private final CurrentCluster current;

  OpenCluster(ClusterRows clusters, CurrentCluster current) {
    this.clusters = clusters;
    this.current = current;
  }

  /**
   * Opens it.
   *
   * @param id of the cluster, which must already be the current one
   * @param zone until another is chosen
   */
  @Transactional
  public void open(UUID id, ZoneId zone) {
    ClusterRow row = new ClusterRow();
    row.id = id;
    row.name = "Our cluster";
    row.word = ClusterWord.until(id);
    row.keep(CalendarSettings.defaultsOf("general"));
    row.timeZone = zone.getId();
    row.keepLanguages(List.of(Locale.ENGLISH));
    row.keep(Policies.DEFAULTS);
    row.setUp = false;
    row.unfoldedUntil = LocalDate.EPOCH;
    clusters.persist(row);
  }

  /** Notes that this is the demo cluster, made for the week that begins on that Monday. */
  @Transactional
  public void keepDemoMonday(LocalDate monday) {
    clusters.findById(current.id()).demoMonday = monday;
  }
}
