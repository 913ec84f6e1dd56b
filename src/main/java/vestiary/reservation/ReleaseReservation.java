package vestiary.reservation;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.pool.KeepHeld;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Gives up what is set aside, so that others and plans may have it. */
@ApplicationScoped
class ReleaseReservation {

  private final ReservationRows rows;
  private final KeepHeld held;
  private final CurrentVisitor visitor;

  ReleaseReservation(ReservationRows rows, KeepHeld held, CurrentVisitor visitor) {
    this.rows = rows;
    this.held = held;
    this.visitor = visitor;
  }

  /**
   * Gives it up; {@link ReserveSets#restore} takes that back.
   *
   * @throws Refused if there is none, it is out, it was given up already, or its church is none of
   *     the visitor's
   */
  @Transactional
  void release(String id) {
    ReservationRow row = rows.getLocked(id);
    visitor.refuseOutsideOwn(Action.SET_ASIDE, row.churchId);
    switch (row.toState()) {
      case OUT ->
          throw taken(
              say(
                  "This is out of the cupboard, and so cannot be given up. Say that it is back first."));
      case RETURNED -> throw taken(say("This was out and is back; there is nothing to give up."));
      case RELEASED -> throw taken(say("This was given up already."));
      case HELD -> row.state = ReservationState.RELEASED.id();
    }
    held.release(row.id);
    rows.flush();
  }

  private static Refused taken(String sentence) {
    return new Refused(new Refusal.Taken("", say("%s Nothing was changed.", sentence)));
  }
}
