package vestiary.lending;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.UUID;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

@ApplicationScoped
class LendingRows implements PanacheRepositoryBase<LendingRow, UUID> {

  /** Those of a cluster on either side, the latest first. */
  List<LendingRow> of(UUID cluster) {
    return list("clusterId = ?1 or borrowerId = ?1 order by starts desc, id desc", cluster);
  }

  /**
   * The one that an address names.
   *
   * @throws Refused if the cluster is on neither side of any such
   */
  LendingRow get(String id, UUID cluster) {
    return find("id = ?1 and (clusterId = ?2 or borrowerId = ?2)", Asked.id("lending", id), cluster)
        .firstResultOptional()
        .orElseThrow(() -> notThere(id));
  }

  /** The same, for nobody else to answer until the transaction ends. */
  LendingRow getLocked(String id, UUID cluster) {
    return find("id = ?1 and (clusterId = ?2 or borrowerId = ?2)", Asked.id("lending", id), cluster)
        .withLock(LockModeType.PESSIMISTIC_WRITE)
        .firstResultOptional()
        .orElseThrow(() -> notThere(id));
  }

  private static Refused notThere(String id) {
    return new Refused(new Refusal.NotThere("lending", id));
  }
}
