package vestiary.lending;

import java.util.List;
import java.util.UUID;
import vestiary.calendar.Term;
import vestiary.pool.FindLendable;
import vestiary.pool.PooledPiece;

/**
 * A piece as it was when it was offered, in the words of the API, so that both sides can hold it
 * against what comes back.
 *
 * @param colours what it may serve as; the first is what it is
 * @param set code of its set, or empty
 */
record LentPiece(
    UUID id,
    String code,
    String kind,
    List<String> colours,
    String grade,
    String size,
    String set,
    String owner,
    String condition) {

  LentPiece {
    colours = List.copyOf(colours);
  }

  static LentPiece of(FindLendable.Lendable one) {
    PooledPiece piece = one.piece();
    return new LentPiece(
        one.id(),
        piece.code(),
        piece.kind().id(),
        piece.colours().stream().map(Term::id).toList(),
        piece.grade(),
        piece.size(),
        piece.set(),
        piece.owner(),
        piece.condition());
  }
}
