package vestiary.pool;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.vesting.ChurchId;

/** Pieces that were out and are taken in again; they are locked by {@link OutPieces#lock}. */
@ApplicationScoped
public class ComeBack {

  /** What a return that nobody drove is called among the journeys. */
  private static final String WHOEVER = "whoever brought it back";

  private final OccupationRows occupations;
  private final MovementRows movements;
  private final PieceRows pieces;
  private final Event<HeldTurned> turned;

  ComeBack(
      OccupationRows occupations,
      MovementRows movements,
      PieceRows pieces,
      Event<HeldTurned> turned) {
    this.turned = turned;
    this.occupations = occupations;
    this.movements = movements;
    this.pieces = pieces;
  }

  /**
   * What a return left.
   *
   * @param displaced what was kept for a time in which it was in fact still out
   * @param movement the carriage that was noted, or none where it was taken in where it was
   */
  public record Come(List<UUID> displaced, Optional<UUID> movement) {}

  /**
   * Notes that a piece is back: its time out ends now, and it lies at that church.
   *
   * @param occupation of its time out, not ended yet
   */
  @Transactional(Transactional.TxType.MANDATORY)
  public Come back(UUID occupation, ChurchId church, Instant now) {
    OccupationRow row = occupations.findById(occupation);
    row.returnedAt = now;
    List<OccupationRow> displaced =
        row.ends.isBefore(now)
            ? occupations.plannedOrHeld(List.of(row.pieceId), row.ends, now)
            : List.of();
    displaced.forEach(was -> was.standing = false);
    occupations.flush();
    end(row, now);
    occupations.flush();
    tell(row);
    return new Come(
        displaced.stream().map(was -> was.id).toList(), carry(row, church, now).map(m -> m.id));
  }

  /** At the real time, or where care began that was noted while it was overdue. */
  private void end(OccupationRow row, Instant now) {
    Instant ends = occupations.firstAfter(row, now).orElse(now);
    if (ends.isAfter(row.starts)) {
      row.ends = ends;
    } else {
      // It came back in the moment in which it went: no time is taken.
      row.standing = false;
    }
  }

  private Optional<MovementRow> carry(OccupationRow row, ChurchId church, Instant now) {
    UUID home = pieces.findById(row.pieceId).homeId;
    UUID from = row.churchId == null ? home : row.churchId;
    if (from.equals(church.value())) {
      return Optional.empty();
    }
    MovementRow carried = new MovementRow();
    carried.pieceId = row.pieceId;
    carried.fromId = from;
    carried.toId = church.value();
    carried.leaveBy = now;
    carried.arriveBy = now;
    carried.carrier = WHOEVER;
    carried.done = true;
    carried.tripId = TripId.of(new ChurchId(from), church, now, now, WHOEVER);
    movements.persist(carried);
    return Optional.of(carried);
  }

  /**
   * Takes a return back: the piece is out as it was.
   *
   * @param due when it was to be back
   * @throws Refused if it was taken for something else since
   */
  @Transactional(Transactional.TxType.MANDATORY)
  public void forget(UUID occupation, Instant due, Come come) {
    OccupationRow row = occupations.findById(occupation);
    if (row == null || !occupations.isFree(row.pieceId, row.id, row.starts, due)) {
      throw new Refused(
          new Refusal.Taken(
              "",
              say(
                  "It was taken for something else since it came back, so that the return stays. Say that it goes out again.")));
    }
    come.movement().ifPresent(movements::deleteById);
    row.returnedAt = null;
    row.ends = due;
    row.standing = true;
    occupations.flush();
    occupations.listIn(come.displaced()).stream()
        .filter(was -> occupations.isFree(was.pieceId, was.id, was.starts, was.ends))
        .forEach(was -> was.standing = true);
    occupations.flush();
    tell(row);
  }

  private void tell(OccupationRow row) {
    if (row.reservationId != null) {
      turned.fire(new HeldTurned(row.reservationId));
    }
  }
}
