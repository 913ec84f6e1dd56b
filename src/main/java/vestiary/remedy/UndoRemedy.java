package vestiary.remedy;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import vestiary.plan.PlansSince;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Puts back what was before a remedy, in one transaction. */
@ApplicationScoped
class UndoRemedy {

  private static final int DATE = "2026-12-08".length();

  private final AppliedRemedyRows rows;
  private final DoDeed deeds;
  private final PlansSince plans;
  private final Clock clock;

  UndoRemedy(AppliedRemedyRows rows, DoDeed deeds, PlansSince plans, Clock clock) {
    this.plans = plans;
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
          // What a plan has put there since is the plan's own.
          boolean replaced = plans.haveReplaced(found.deed.added(), date(found));
          deeds.putBack(replaced ? found.deed.withoutPlanned() : found.deed);
          found.standing = false;
          found.undoneAt = clock.instant();
        });
  }

  /** The date of its first Mass stands at the head of a clash's name. */
  private static LocalDate date(AppliedRemedyRow row) {
    return LocalDate.parse(row.clash.substring(0, DATE));
  }
}
