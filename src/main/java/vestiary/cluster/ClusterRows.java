package vestiary.cluster;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.util.UUID;

@ApplicationScoped
class ClusterRows implements PanacheRepositoryBase<ClusterRow, UUID> {

  /**
   * The row as it is once nobody else holds it; everybody else waits until this transaction ends.
   * What was changed so far is written first, since reading anew would lose it silently.
   *
   * @throws jakarta.persistence.OptimisticLockException if somebody else changed the same meanwhile
   */
  ClusterRow lockedAnew(UUID id) {
    flush();
    ClusterRow row = findById(id);
    getEntityManager().refresh(row, LockModeType.PESSIMISTIC_WRITE);
    return row;
  }
}
