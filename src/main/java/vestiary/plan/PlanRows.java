package vestiary.plan;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

@ApplicationScoped
class PlanRows implements PanacheRepositoryBase<PlanRow, UUID> {

  PlanRow get(String id) {
    return there(findById(Asked.id("plan", id)), id);
  }

  /** Waits until nobody else changes it. */
  PlanRow getLocked(String id) {
    return there(findById(Asked.id("plan", id), LockModeType.PESSIMISTIC_WRITE), id);
  }

  Optional<PlanRow> findAtWork(LocalDate first, LocalDate last, boolean keeping) {
    return find(
            "firstDate = ?1 and lastDate = ?2 and keeping = ?3 and status in ('queued', 'running')",
            first,
            last,
            keeping)
        .firstResultOptional();
  }

  /** Applied ones that have a date in common with the span, the newest first. */
  List<PlanRow> appliedWithin(LocalDate first, LocalDate last) {
    return list(
        "appliedAt is not null and firstDate <= ?2 and lastDate >= ?1"
            + " order by appliedAt desc, id desc",
        first,
        last);
  }

  /** Those that were asked for before and never applied. */
  void forgetOlderThan(Instant moment) {
    delete("appliedAt is null and requestedAt < ?1", moment);
  }

  private static PlanRow there(PlanRow row, String id) {
    return Optional.ofNullable(row)
        .orElseThrow(() -> new Refused(new Refusal.NotThere("plan", id)));
  }
}
