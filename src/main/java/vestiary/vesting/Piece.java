package vestiary.vesting;

import java.util.List;
import java.util.Objects;
import vestiary.calendar.Colour;

/**
 * One physical vestment of the pool.
 *
 * @param code unique in the cluster
 * @param colours the colours it may serve as, one or more; the first is what it is
 * @param home the church it belongs in
 * @param staysHome whether it never leaves that church
 * @param set the code of its set, empty if it is in none
 * @param away when it cannot be used, in any order
 * @param make what it is like, which never decides whether it serves
 */
public record Piece(
    String code,
    PieceKind kind,
    List<Colour> colours,
    ChurchId home,
    boolean staysHome,
    String set,
    List<Away> away,
    Make make) {

  public Piece {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(home, "home");
    Objects.requireNonNull(set, "set");
    Objects.requireNonNull(make, "make");
    colours = List.copyOf(colours);
    away = List.copyOf(away);
    if (colours.isEmpty()) {
      throw new IllegalArgumentException("Piece " + code + " has no colour");
    }
  }

  /** A piece of which nothing else is known. */
  public Piece(
      String code,
      PieceKind kind,
      List<Colour> colours,
      ChurchId home,
      boolean staysHome,
      String set,
      List<Away> away) {
    this(code, kind, colours, home, staysHome, set, away, Make.ANY);
  }
}
