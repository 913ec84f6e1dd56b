package vestiary.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.transaction.Transactional;
import vestiary.pool.HeldTurned;
import vestiary.pool.KeepHeld;

/** What is held is out when its pieces go, by whatever way, and back when they have returned. */
@ApplicationScoped
class FollowPieces {

  private final ReservationRows rows;
  private final KeepHeld held;

  FollowPieces(ReservationRows rows, KeepHeld held) {
    this.rows = rows;
    this.held = held;
  }

  @Transactional(Transactional.TxType.MANDATORY)
  void follow(@Observes HeldTurned turned) {
    ReservationRow row = rows.findById(turned.reservation());
    row.state =
        switch (held.placeOf(row.id)) {
          case HELD -> ReservationState.HELD.id();
          case OUT -> ReservationState.OUT.id();
          case BACK -> ReservationState.RETURNED.id();
        };
    rows.flush();
  }
}
