package vestiary.planning;

import java.util.EnumSet;
import java.util.Set;
import vestiary.vesting.PieceKind;

/** Kinds of piece in the words of pages. */
public final class PieceNouns {

  /** Nobody asks what colour an alb is. */
  private static final Set<PieceKind> COLOURLESS =
      EnumSet.of(
          PieceKind.ALB, PieceKind.AMICE, PieceKind.CINCTURE, PieceKind.MITRE, PieceKind.VIMPA);

  private PieceNouns() {}

  /** One of them, for example "deacon’s stole". */
  public static String of(PieceKind kind) {
    return switch (kind) {
      case DEACON_STOLE -> "deacon’s stole";
      case HUMERAL_VEIL -> "humeral veil";
      default -> kind.id();
    };
  }

  /** Whether people name it with its colour. */
  public static boolean hasColour(PieceKind kind) {
    return !COLOURLESS.contains(kind);
  }
}
