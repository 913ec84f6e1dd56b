package vestiary.allocation;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/**
 * Whether a piece can be at a Mass from set-out to clearance, its colour left aside. It comes from
 * its home, whenever that takes it to leave, and an absence begins and ends there.
 */
final class Access {

  private final Journeys journeys;

  Access(Journeys journeys) {
    this.journeys = journeys;
  }

  /** Whether nothing keeps the piece from the Mass. */
  boolean isPossible(Piece piece, Need need) {
    if (piece.keptFrom().contains(need.mass())) {
      return false;
    }
    boolean reaches =
        piece.home().equals(need.church())
            || (!piece.staysHome() && hasJourney(piece.home(), need.church()));
    if (!reaches) {
      return false;
    }
    for (Away away : piece.away()) {
      if (isInTheWay(away, piece, need)) {
        return false;
      }
    }
    return true;
  }

  /** What keeps the piece from the Mass; empty if nothing does. */
  Optional<NotServing> findHindrance(Piece piece, Need need) {
    if (isPossible(piece, need)) {
      return Optional.empty();
    }
    boolean atHome = piece.home().equals(need.church());
    if (!atHome && piece.staysHome()) {
      return Optional.of(new NotServing(piece, Hindrance.STAYS_HOME, List.of()));
    }
    if (!atHome && !hasJourney(piece.home(), need.church())) {
      return Optional.of(new NotServing(piece, Hindrance.NO_JOURNEY, List.of()));
    }
    if (piece.keptFrom().contains(need.mass())) {
      return Optional.of(new NotServing(piece, Hindrance.KEPT_BACK, List.of()));
    }
    List<Away> inTheWay =
        piece.away().stream()
            .filter(away -> isInTheWay(away, piece, need))
            .sorted(Comparator.comparing(Away::from))
            .toList();
    return Optional.of(new NotServing(piece, Hindrance.AWAY, inTheWay));
  }

  private boolean hasJourney(ChurchId from, ChurchId to) {
    return journeys.seconds(from, to) != Journeys.NO_WAY;
  }

  private boolean isInTheWay(Away away, Piece piece, Need need) {
    long there = journeys.seconds(piece.home(), need.church());
    long back = journeys.seconds(need.church(), piece.home());
    boolean backBefore =
        Seconds.ceiling(away.until()) + there <= Seconds.floor(need.window().setOut());
    boolean leavesAfter =
        Seconds.ceiling(need.window().cleared()) + back <= Seconds.floor(away.from());
    return !backBefore && !leavesAfter;
  }
}
