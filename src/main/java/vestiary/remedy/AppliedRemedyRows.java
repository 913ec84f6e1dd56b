package vestiary.remedy;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class AppliedRemedyRows implements PanacheRepositoryBase<AppliedRemedyRow, UUID> {

  /** The one that holds for a clash, or left it behind, the newest first. */
  List<AppliedRemedyRow> standingFor(String clash) {
    return list("(clash = ?1 or leaves = ?1) and standing order by appliedAt desc, id desc", clash);
  }

  /** The one that holds for a clash; nobody else changes it until the transaction ends. */
  Optional<AppliedRemedyRow> findStandingLocked(String clash) {
    return find("(clash = ?1 or leaves = ?1) and standing order by appliedAt desc, id desc", clash)
        .withLock(LockModeType.PESSIMISTIC_WRITE)
        .firstResultOptional();
  }

  /** Whether one was applied in that place, even if it is undone. */
  boolean wasApplied(String clash, int place) {
    return count("(clash = ?1 or leaves = ?1) and place = ?2", clash, place) > 0;
  }
}
