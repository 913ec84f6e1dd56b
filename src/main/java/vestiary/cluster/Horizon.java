package vestiary.cluster;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import vestiary.access.CurrentCluster;

/** Until which date the cluster's patterns have yielded their Masses, that date included. */
@ApplicationScoped
public class Horizon {

  private final ClusterRows clusters;
  private final CurrentCluster current;

  Horizon(ClusterRows clusters, CurrentCluster current) {
    this.clusters = clusters;
    this.current = current;
  }

  /** The date as it stands; it may move on at any time. */
  public LocalDate date() {
    return clusters.findById(current.id()).unfoldedUntil;
  }

  /** The date, which stays as it is for others until this transaction ends. */
  @Transactional(Transactional.TxType.MANDATORY)
  public LocalDate lock() {
    return clusters.lockedAnew(current.id()).unfoldedUntil;
  }

  /** Moves the date on; {@link #lock} comes first. */
  @Transactional(Transactional.TxType.MANDATORY)
  public void moveTo(LocalDate date) {
    clusters.findById(current.id()).unfoldedUntil = date;
  }
}
