package vestiary.exchange;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

@ApplicationScoped
class ImportRows implements PanacheRepositoryBase<ImportRow, UUID> {

  /** Those that were brought in, undone or not, the last first. */
  List<ImportRow> done(int most) {
    return find("doneAt is not null order by doneAt desc, id desc").page(0, most).list();
  }

  ImportRow get(String id) {
    return there(id, findById(Asked.id("import", id)));
  }

  /** Nobody else changes it until this transaction ends. */
  ImportRow getLocked(String id) {
    return there(id, findById(Asked.id("import", id), LockModeType.PESSIMISTIC_WRITE));
  }

  /** Whether it is still that turn's to go on; then how far it is can be seen. */
  boolean report(UUID id, int starts, int progress) {
    return update(
            "progress = ?1 where id = ?2 and starts = ?3 and status = ?4 and not cancelled",
            progress,
            id,
            starts,
            ImportState.RUNNING.id())
        == 1;
  }

  /** Those of one person that came to nothing. */
  List<ImportRow> idle(String visitor) {
    return list(
        "visitor = ?1 and doneAt is null and status not in ?2 order by sentAt desc",
        visitor,
        List.of(ImportState.WAITING.id(), ImportState.RUNNING.id()));
  }

  long deleteIdleBefore(Instant moment) {
    return delete("doneAt is null and sentAt < ?1", moment);
  }

  private static ImportRow there(String id, ImportRow row) {
    if (row == null) {
      throw new Refused(new Refusal.NotThere("import", id));
    }
    return row;
  }
}
