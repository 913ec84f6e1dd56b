package vestiary.pool;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Says that a piece is back from care, and takes that back. */
@ApplicationScoped
@Transactional
public class EndCare {

  private final PieceRows pieces;
  private final OccupationRows occupations;
  private final CurrentVisitor visitor;
  private final Clock clock;

  EndCare(PieceRows pieces, OccupationRows occupations, CurrentVisitor visitor, Clock clock) {
    this.pieces = pieces;
    this.occupations = occupations;
    this.visitor = visitor;
    this.clock = clock;
  }

  /**
   * Ends care: what has not begun is struck out, what goes on ends now, what is over stays. What
   * was held for later and broken by it stands again where nothing else has taken the piece.
   *
   * @return whether it can be taken back; what was struck out cannot
   * @throws Refused if the piece has no such care
   */
  public boolean end(String code, String id) {
    PieceRow piece = pieces.getByCode(code);
    OccupationRow row = row(piece, id);
    Instant now = clock.instant();
    boolean begun = row.starts.isBefore(now);
    row.awaited = false;
    if (!begun) {
      occupations.delete(row);
    } else if (row.ends == null || row.ends.isAfter(now)) {
      row.ends = now;
    }
    occupations.flush();
    occupations.heldBrokenBy(row.id, now).forEach(this::standAgain);
    return begun;
  }

  /**
   * Takes back that it is back: care ends when it was promised to, or when somebody says so.
   *
   * @throws Refused if the piece has no such care, or is out for something else by now
   */
  public void reopen(String code, String id) {
    PieceRow piece = pieces.getByCode(code);
    OccupationRow row = row(piece, id);
    // What stands meanwhile goes first, since the database refuses two times that overlap.
    occupations
        .displace(
            piece.id, row.starts, row.promised == null ? OccupationRows.FAR_AHEAD : row.promised)
        .forEach(lost -> lost.brokenBy = row.id);
    row.awaited = true;
    row.ends = row.promised;
    occupations.flush();
  }

  private void standAgain(OccupationRow held) {
    if (occupations.isFree(held.pieceId, held.id, held.starts, held.ends)) {
      held.standing = true;
      held.brokenBy = null;
      occupations.flush();
    }
  }

  private OccupationRow row(PieceRow piece, String id) {
    visitor.refuseOutsideOwn(Action.KEEP_VESTMENTS, piece.homeId);
    OccupationRow row =
        Optional.ofNullable(occupations.findById(Asked.id("care", id)))
            .filter(o -> o.pieceId.equals(piece.id) && o.state.equals(OccupationRow.CARE))
            .orElseThrow(() -> new Refused(new Refusal.NotThere("care", id)));
    LentPieces.refuseIfOfLending(row, piece);
    return row;
  }
}
