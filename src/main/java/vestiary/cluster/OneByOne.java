package vestiary.cluster;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import vestiary.access.CurrentCluster;

/**
 * Keeps large changes of one cluster apart: a list that comes twice at the same moment would find
 * nothing of itself, and be entered twice.
 */
@ApplicationScoped
public class OneByOne {

  private final ClusterRows clusters;
  private final CurrentCluster current;

  OneByOne(ClusterRows clusters, CurrentCluster current) {
    this.clusters = clusters;
    this.current = current;
  }

  /** Waits until nobody else is at it; everybody else waits until this transaction ends. */
  @Transactional(Transactional.TxType.MANDATORY)
  public void waitForTurn() {
    clusters
        .getEntityManager()
        .refresh(clusters.findById(current.id()), LockModeType.PESSIMISTIC_WRITE);
  }
}
