package vestiary.cluster;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import vestiary.access.CurrentCluster;
import vestiary.proper.ReadPropers;

/**
 * Keeps large changes of one cluster apart: a list that comes twice at the same moment would find
 * nothing of itself, and be entered twice.
 */
@ApplicationScoped
public class OneByOne {

  private final ClusterRows clusters;
  private final CurrentCluster current;
  private final ReadPropers propers;

  OneByOne(ClusterRows clusters, CurrentCluster current, ReadPropers propers) {
    this.clusters = clusters;
    this.current = current;
    this.propers = propers;
  }

  /**
   * Waits until nobody else is at it; everybody else waits until this transaction ends.
   *
   * @throws jakarta.persistence.OptimisticLockException if somebody else changed meanwhile what was
   *     changed here so far
   */
  @Transactional(Transactional.TxType.MANDATORY)
  public void waitForTurn() {
    clusters.lockedAnew(current.id());
    propers.forget();
  }
}
