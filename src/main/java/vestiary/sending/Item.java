package vestiary.sending;

import java.util.Comparator;
import java.util.List;
import vestiary.pool.PooledPiece;
import vestiary.vesting.ChurchId;

/**
 * What a label names: a set with all its pieces, or a single piece.
 *
 * @param code of the set, or of the piece
 * @param name of the set; empty if it has none
 * @param isSet whether all pieces of a set are meant
 * @param pieces one or more, the vestment before the stole that comes with it
 */
public record Item(String code, String name, boolean isSet, List<PooledPiece> pieces) {

  public Item {
    pieces =
        pieces.stream()
            .sorted(Comparator.comparing(Item::stolesLast).thenComparing(PooledPiece::code))
            .toList();
  }

  private static int stolesLast(PooledPiece piece) {
    return piece.kind().id().endsWith("stole") ? Integer.MAX_VALUE : piece.kind().ordinal();
  }

  /** The piece that it is called by. */
  public PooledPiece first() {
    return pieces.get(0);
  }

  public ChurchId home() {
    return first().home();
  }

  public List<String> codes() {
    return pieces.stream().map(PooledPiece::code).toList();
  }
}
