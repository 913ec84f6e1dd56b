package vestiary.allocation.flow;

import java.util.List;
import vestiary.vesting.MassId;
import vestiary.vesting.Piece;

/**
 * What is carried as one: a chasuble with its stole, a dalmatic with its stole, or a single piece.
 *
 * @param pieces in order of kind, one or two
 * @param start number of the church where it lies before everything
 * @param stays whether it never leaves that church
 * @param fixed where it is held or away, one after the other
 */
public record Item(List<Piece> pieces, int start, boolean stays, List<Visit> fixed) {

  public Item {
    pieces = List.copyOf(pieces);
    fixed = List.copyOf(fixed);
  }

  /** Masses for which an owner does not give one of the pieces, in order. */
  List<MassId> keptFrom() {
    return pieces.stream().flatMap(piece -> piece.keptFrom().stream()).distinct().sorted().toList();
  }

  /** The code of the first piece. */
  public String code() {
    return pieces.get(0).code();
  }
}
