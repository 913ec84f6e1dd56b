package vestiary.pool;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.vesting.ChurchId;

/** Gives a piece another place in its sacristy, or another church as its home. */
@ApplicationScoped
@Transactional
public class MovePiece {

  private final PieceRows pieces;
  private final CurrentVisitor visitor;

  MovePiece(PieceRows pieces, CurrentVisitor visitor) {
    this.pieces = pieces;
    this.visitor = visitor;
  }

  /**
   * @param place empty if it is not known
   * @throws vestiary.problem.Refused if there is no such piece, or it is borrowed
   */
  public void toPlace(String code, String place) {
    own(code).place = place;
    pieces.flush();
  }

  /**
   * Whose it is stays as it was: in a cluster of several parishes a piece is kept elsewhere, not
   * given away (CIC 1256).
   *
   * @throws vestiary.problem.Refused if there is no such piece, or it is borrowed
   */
  public void toChurch(String code, ChurchId home) {
    PieceRow row = own(code);
    row.homeId = home.value();
    row.place = "";
    pieces.flush();
  }

  private PieceRow own(String code) {
    PieceRow row = pieces.getByCode(code);
    visitor.refuseOutsideOwn(Action.KEEP_VESTMENTS, row.homeId);
    LentPieces.refuseIfBorrowed(row);
    return row;
  }
}
