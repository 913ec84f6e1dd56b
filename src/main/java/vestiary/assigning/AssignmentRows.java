package vestiary.assigning;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.util.UUID;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

@ApplicationScoped
class AssignmentRows implements PanacheRepositoryBase<AssignmentRow, UUID> {

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
