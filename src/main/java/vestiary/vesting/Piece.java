package vestiary.vesting;

import java.util.List;
import java.util.Objects;
import vestiary.calendar.Colour;

/**
 * One physical vestment of the pool. Size, shade and grade are not counted here.
 *
 * @param code unique in the cluster
 * @param colours the colours it may serve as, one or more; the first is what it is
 * @param home the church it belongs in
 * @param staysHome whether it never leaves that church
 * @param set the code of its set, empty if it is in none
 * @param away when it cannot be used, in any order
 */
public record Piece(
    String code,
    PieceKind kind,
    List<Colour> colours,
    ChurchId home,
    boolean staysHome,
    String set,
    List<Away> away) {

  public Piece {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(home, "home");
    Objects.requireNonNull(set, "set");
    colours = List.copyOf(colours);
    away = List.copyOf(away);
    if (colours.isEmpty()) {
      throw new IllegalArgumentException("Piece " + code + " has no colour");
    }
  }
}
