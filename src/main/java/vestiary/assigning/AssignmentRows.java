package vestiary.assigning;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import io.quarkus.panache.common.Sort;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.util.Optional;
import java.util.UUID;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

@ApplicationScoped
class AssignmentRows implements PanacheRepositoryBase<AssignmentRow, UUID> {

  /** The last one that was not undone. */
  Optional<AssignmentRow> findLast() {
    return find("undoneAt is null", Sort.descending("assignedAt")).firstResultOptional();
  }

  /**
   * That of an address, which nobody else changes until the transaction ends.
   *
   * @throws Refused if there is none
   */
  AssignmentRow getLocked(String id) {
    AssignmentRow row = findById(Asked.id("assignment", id), LockModeType.PESSIMISTIC_WRITE);
    if (row == null) {
      throw new Refused(new Refusal.NotThere("assignment", id));
    }
    return row;
  }
}
