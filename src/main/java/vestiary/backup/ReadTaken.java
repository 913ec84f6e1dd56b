package vestiary.backup;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import vestiary.cluster.ReadCluster;
import vestiary.web.English;

/** When backups were taken out. */
@ApplicationScoped
@Transactional
class ReadTaken {

  private final TakenBackupRows taken;
  private final ReadCluster cluster;

  ReadTaken(TakenBackupRows taken, ReadCluster cluster) {
    this.taken = taken;
    this.cluster = cluster;
  }

  /** When the newest was, in a sentence. */
  String newest() {
    return taken
        .newest()
        .map(row -> row.at.atZone(cluster.cluster().zone()))
        .map(
            at ->
                "The newest was taken out on %s at %s."
                    .formatted(English.dateAndYear(at.toLocalDate()), English.clock(at)))
        .orElse("None was taken out yet.");
  }
}
