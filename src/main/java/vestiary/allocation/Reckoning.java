package vestiary.allocation;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import vestiary.vesting.Away;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.Window;

/**
 * What a person reckons from hours and journeys: whether one piece can serve two needs, and whether
 * a piece serves a need. It shares no step with the search for shortages.
 */
final class Reckoning {

  private final Span span;

  Reckoning(Span span) {
    this.span = span;
  }

  /** Whether a piece that served the one can serve the other next. */
  boolean precedes(Need one, Need other) {
    Window first = one.window();
    Window next = other.window();
    boolean staysOut =
        one.church().equals(other.church())
            && !first.end().plus(span.policies().turn()).isAfter(next.start());
    boolean carried =
        span.journeys()
            .find(one.church(), other.church())
            .filter(time -> !first.cleared().plus(time).isAfter(next.setOut()))
            .isPresent();
    return staysOut || carried;
  }

  /** Whether no piece can serve both. */
  boolean clash(Need one, Need other) {
    return !precedes(one, other) && !precedes(other, one);
  }

  boolean allClash(List<Need> needs) {
    for (int at = 0; at < needs.size(); at++) {
      Need one = needs.get(at);
      if (!needs.subList(0, at).stream().allMatch(other -> clash(one, other))) {
        return false;
      }
    }
    return true;
  }

  /** Whether the piece is of the kind and colour, and can be there in time. */
  boolean serves(Piece piece, Need need) {
    return piece.kind() == need.kind()
        && need.isServedBy(piece.colours())
        && canBeThere(piece, need);
  }

  /** The same, with the colours of the need's lawful substitutes. */
  boolean servesLawfully(Piece piece, Need need) {
    return piece.kind() == need.kind()
        && need.isLawfullyServedBy(piece.colours())
        && canBeThere(piece, need);
  }

  private boolean canBeThere(Piece piece, Need need) {
    return !piece.keptFrom().contains(need.mass()) && canArrive(piece, need);
  }

  private boolean canArrive(Piece piece, Need need) {
    boolean atHome = piece.home().equals(need.church());
    if (!atHome && piece.staysHome()) {
      return false;
    }
    Optional<Duration> there = span.journeys().find(piece.home(), need.church());
    return there.isPresent()
        && (piece.away().isEmpty()
            || piece.away().stream().allMatch(away -> leavesTime(away, piece, need, there.get())));
  }

  private boolean leavesTime(Away away, Piece piece, Need need, Duration there) {
    // Subtracted on the side of the Mass: an absence may last to the end of all time.
    Instant leaves = need.window().setOut().minus(there);
    boolean before = !leaves.isBefore(away.until());
    boolean after =
        span.journeys()
            .find(need.church(), piece.home())
            .filter(back -> !need.window().cleared().plus(back).isAfter(away.from()))
            .isPresent();
    return before || after;
  }

  /** Why a piece does not serve a need whose kind and colour it has. */
  Optional<Hindrance> findHindrance(Piece piece, Need need) {
    if (canBeThere(piece, need)) {
      return Optional.empty();
    }
    boolean atHome = piece.home().equals(need.church());
    if (!atHome && piece.staysHome()) {
      return Optional.of(Hindrance.STAYS_HOME);
    }
    if (!atHome && span.journeys().find(piece.home(), need.church()).isEmpty()) {
      return Optional.of(Hindrance.NO_JOURNEY);
    }
    return Optional.of(
        piece.keptFrom().contains(need.mass()) ? Hindrance.KEPT_BACK : Hindrance.AWAY);
  }
}
