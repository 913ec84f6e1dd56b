package vestiary.reservation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import vestiary.pool.PooledPiece;
import vestiary.vesting.PieceKind;

/**
 * What is set aside as one: a set with all its pieces, or a piece of no set.
 *
 * @param code of the set or of the piece
 * @param isSet whether it is a set
 * @param pieces by code, one or more
 */
record Reservable(String code, boolean isSet, List<PooledPiece> pieces) {

  Reservable {
    pieces = List.copyOf(pieces);
  }

  /** All of a pool, by code. */
  static List<Reservable> of(List<PooledPiece> pool) {
    Map<String, List<PooledPiece>> sets = new TreeMap<>();
    List<Reservable> all = new ArrayList<>();
    for (PooledPiece piece : pool) {
      if (piece.set().isEmpty()) {
        all.add(new Reservable(piece.code(), false, List.of(piece)));
      } else {
        sets.computeIfAbsent(piece.set(), code -> new ArrayList<>()).add(piece);
      }
    }
    sets.forEach((code, pieces) -> all.add(new Reservable(code, true, pieces)));
    all.sort(Comparator.comparing(Reservable::code));
    return all;
  }

  /** The piece that a set is named after: its chasuble, else its dalmatic, its cope and so on. */
  PooledPiece main() {
    return pieces.stream().min(Comparator.comparingInt(piece -> rank(piece.kind()))).orElseThrow();
  }

  private static int rank(PieceKind kind) {
    return switch (kind) {
      case CHASUBLE -> 0;
      case DALMATIC -> 1;
      case COPE -> 2;
      case HUMERAL_VEIL -> 3;
      default -> 4 + kind.ordinal();
    };
  }
}
