package vestiary.backup;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import vestiary.cluster.ReadCluster;
import vestiary.web.Speech;

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
                say(
                    "The newest was taken out on %s at %s.",
                    Speech.dateAndYear(at.toLocalDate()), Speech.clock(at)))
        .orElse(say("None was taken out yet."));
  }
}
