package vestiary.setout;

import java.time.Instant;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import vestiary.planning.SpanToCheck;
import vestiary.pool.CarriedPiece;
import vestiary.pool.PlannedWear;
import vestiary.pool.PooledPiece;
import vestiary.pool.SetAside;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Piece;
import vestiary.vesting.Window;

/** What lies in one church for one Mass and is wanted by nobody else meanwhile. */
public final class AtHand {

  private final SpanToCheck span;
  private final List<CarriedPiece> carried;

  /**
   * @param carried what is carried on the days of the span
   */
  public AtHand(SpanToCheck span, List<CarriedPiece> carried) {
    this.span = span;
    this.carried = List.copyOf(carried);
  }

  /**
   * Pieces that lie there from the window's beginning, are away for nothing, planned, held and out
   * for nothing, given by their owners, and not to be driven elsewhere before it ends; by code.
   */
  public List<PooledPiece> at(ChurchId church, MassId mass, Window window) {
    Set<String> taken = taken(window);
    return span.pieces().stream()
        .filter(piece -> !taken.contains(piece.code()))
        .filter(piece -> isFree(piece.toPiece(), church, mass, window))
        .sorted(Comparator.comparing(PooledPiece::code))
        .toList();
  }

  private boolean isFree(Piece piece, ChurchId church, MassId mass, Window window) {
    return span.lies(piece, window.setOut()).equals(church)
        && !piece.keptFrom().contains(mass)
        && piece.away().stream().noneMatch(away -> meets(away, window))
        && span.lies(piece, window.cleared().minusSeconds(1)).equals(church);
  }

  private static boolean meets(Away away, Window window) {
    return away.from().isBefore(window.cleared()) && away.until().isAfter(window.setOut());
  }

  private Set<String> taken(Window window) {
    Set<String> taken = new HashSet<>();
    for (PlannedWear one : span.taken().planned()) {
      if (meets(one.from(), one.until(), window)) {
        taken.add(one.piece());
      }
    }
    for (SetAside one : span.taken().setAside()) {
      if (meets(one.from(), one.until(), window)) {
        taken.add(one.piece());
      }
    }
    for (CarriedPiece one : carried) {
      if (meets(one.leaveBy(), one.arriveBy(), window)) {
        taken.add(one.piece());
      }
    }
    return taken;
  }

  private static boolean meets(Instant from, Instant until, Window window) {
    return from.isBefore(window.cleared()) && until.isAfter(window.setOut());
  }
}
