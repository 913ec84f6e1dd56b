package vestiary.allocation.plan;

import java.util.Optional;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;

/** Which stole is made to go with a chasuble or dalmatic. */
public final class WholeSets {

  private WholeSets() {}

  /** The kind of stole that goes with a chasuble or dalmatic; empty for all else. */
  public static Optional<PieceKind> findStole(PieceKind kind) {
    return switch (kind) {
      case CHASUBLE -> Optional.of(PieceKind.STOLE);
      case DALMATIC -> Optional.of(PieceKind.DEACON_STOLE);
      default -> Optional.empty();
    };
  }

  /** What a stole of that kind goes with; empty for all else. */
  public static Optional<PieceKind> findOuter(PieceKind kind) {
    return switch (kind) {
      case STOLE -> Optional.of(PieceKind.CHASUBLE);
      case DEACON_STOLE -> Optional.of(PieceKind.DALMATIC);
      default -> Optional.empty();
    };
  }

  /** Whether two pieces are of one set. */
  public static boolean areOne(Piece one, Piece other) {
    return !one.set().isEmpty() && one.set().equals(other.set());
  }
}
