package vestiary.vesting;

import java.util.List;
import java.util.Objects;
import java.util.Set;
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
 * @param keptFrom Masses for which its owner does not give it
 */
public record Piece(
    String code,
    PieceKind kind,
    List<Colour> colours,
    ChurchId home,
    boolean staysHome,
    String set,
    List<Away> away,
    Make make,
    Set<MassId> keptFrom) {

  public Piece {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(home, "home");
    Objects.requireNonNull(set, "set");
    Objects.requireNonNull(make, "make");
    colours = List.copyOf(colours);
    away = List.copyOf(away);
    keptFrom = Set.copyOf(keptFrom);
    if (colours.isEmpty()) {
      throw new IllegalArgumentException("Piece " + code + " has no colour");
    }
  }

  /** A piece that its owner gives for every Mass. */
  public Piece(
      String code,
      PieceKind kind,
      List<Colour> colours,
      ChurchId home,
      boolean staysHome,
      String set,
      List<Away> away,
      Make make) {
    this(code, kind, colours, home, staysHome, set, away, make, Set.of());
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

  /** The same, away at these times and no others. */
  public Piece away(List<Away> times) {
    return new Piece(code, kind, colours, home, staysHome, set, times, make, keptFrom);
  }
}
