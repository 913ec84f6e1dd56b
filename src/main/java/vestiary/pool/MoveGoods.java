package vestiary.pool;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import vestiary.vesting.ChurchId;

/** Gives many pieces another home or another owner at once; each change is in the history. */
@ApplicationScoped
@Transactional
public class MoveGoods {

  private final PieceRows pieces;

  MoveGoods(PieceRows pieces) {
    this.pieces = pieces;
  }

  /** How many pieces in use are at home there. */
  public int countAt(ChurchId home) {
    return at(home).size();
  }

  /** How many pieces in use belong to that owner. */
  public int countOf(String owner) {
    return of(owner).size();
  }

  /**
   * Gives every piece that is at home in one church its home in another; what is planned, held or
   * out stays so.
   *
   * @return how many
   */
  public int home(ChurchId from, ChurchId to) {
    List<PieceRow> found = at(from);
    found.forEach(piece -> piece.homeId = to.value());
    pieces.flush();
    return found.size();
  }

  /**
   * Gives every piece of one owner to another.
   *
   * @return how many
   */
  public int owner(String from, String to) {
    List<PieceRow> found = of(from);
    found.forEach(piece -> piece.owner = to);
    pieces.flush();
    return found.size();
  }

  private List<PieceRow> at(ChurchId home) {
    return pieces.byCode().stream().filter(piece -> piece.homeId.equals(home.value())).toList();
  }

  private List<PieceRow> of(String owner) {
    return pieces.byCode().stream().filter(piece -> piece.owner.equals(owner)).toList();
  }
}
