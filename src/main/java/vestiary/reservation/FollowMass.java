package vestiary.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.transaction.Transactional;
import java.util.List;
import vestiary.pool.KeepHeld;
import vestiary.schedule.DatedMass;
import vestiary.schedule.MassMoved;
import vestiary.schedule.ReadMasses;

/**
 * What is held for a Mass goes with it where it can be had at the new hour, and is given up where
 * it cannot, or where the Mass is cancelled. What is out is out, and stays so.
 */
@ApplicationScoped
class FollowMass {

  private final ReservationRows rows;
  private final KeepHeld held;
  private final ReserveSets reserve;
  private final ReadMasses masses;

  FollowMass(ReservationRows rows, KeepHeld held, ReserveSets reserve, ReadMasses masses) {
    this.rows = rows;
    this.held = held;
    this.reserve = reserve;
    this.masses = masses;
  }

  @Transactional(Transactional.TxType.MANDATORY)
  void follow(@Observes MassMoved moved) {
    List<ReservationRow> standing =
        rows.standingFor(List.of(moved.mass())).stream()
            .filter(row -> row.toState() == ReservationState.HELD)
            .toList();
    standing.forEach(
        row -> {
          row.state = ReservationState.RELEASED.id();
          held.release(row.id);
        });
    rows.flush();
    if (!moved.cancelled() && !standing.isEmpty()) {
      DatedMass mass = masses.get(moved.mass().value().toString());
      standing.forEach(row -> reserve.follow(row, mass));
      rows.flush();
    }
  }
}
