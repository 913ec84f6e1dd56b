package vestiary.remedy;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.Optional;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Puts back what was before a remedy, in one transaction. */
@ApplicationScoped
class UndoRemedy {

  private final AppliedRemedyRows rows;
  private final DoDeed deeds;
  private final Clock clock;

  UndoRemedy(AppliedRemedyRows rows, DoDeed deeds, Clock clock) {
    this.rows = rows;
    this.deeds = deeds;
    this.clock = clock;
  }

  /**
   * Undoes; once that is done, doing it again changes nothing.
   *
   * @throws Refused if nothing was ever applied in that place, or something was changed since that
   *     stands in the way
   */
  @Transactional
  void undo(String clash, int place) {
    Optional<AppliedRemedyRow> row =
        rows.findStandingLocked(clash).filter(found -> found.place == place);
    if (row.isEmpty() && !rows.wasApplied(clash, place)) {
      throw new Refused(new Refusal.NotThere("applied remedy", String.valueOf(place)));
    }
    row.ifPresent(
        found -> {
          deeds.putBack(found.deed);
          found.standing = false;
          found.undoneAt = clock.instant();
        });
  }
}
