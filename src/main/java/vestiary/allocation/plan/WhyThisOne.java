package vestiary.allocation.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.Step;

/**
 * Tells from a plan why one piece is worn and no other; what can be seen, not what was searched.
 */
public final class WhyThisOne {

  private final Provision.Worn worn;
  private final Need need;
  private final Plan plan;
  private final Situation situation;

  private WhyThisOne(Provision.Worn worn, Plan plan, Situation situation) {
    this.worn = worn;
    this.need = worn.need();
    this.plan = plan;
    this.situation = situation;
  }

  /** The reason for one provision of a plan. */
  public static Reason of(Provision.Worn worn, Plan plan, Situation situation) {
    return new WhyThisOne(worn, plan, situation).reason();
  }

  private Reason reason() {
    List<Reason.Other> others =
        situation.span().pieces().stream()
            .filter(piece -> piece.kind() == need.kind() && !piece.equals(worn.piece()))
            .map(piece -> new Reason.Other(piece, obstacle(piece)))
            .sorted(
                Comparator.comparing(Reason.Other::obstacle)
                    .thenComparing(other -> other.piece().code()))
            .toList();
    return new Reason(ground(), worn.source(), others);
  }

  private Ground ground() {
    if (worn.held()) {
      return Ground.HELD;
    }
    Optional<Movement> last =
        plan.movements().stream()
            .filter(one -> one.pieces().contains(worn.piece()))
            .filter(one -> !one.arriveBy().isAfter(need.window().setOut()))
            .reduce((earlier, later) -> later);
    if (last.isEmpty()) {
      return worn.piece().home().equals(need.church()) ? Ground.AT_HOME : Ground.STILL_THERE;
    }
    boolean since =
        plan.assignments().stream()
            .filter(one -> one.piece().equals(worn.piece()) && !one.need().equals(need))
            .map(one -> one.need().window())
            .anyMatch(
                window ->
                    window.start().isBefore(need.window().start())
                        && !window.setOut().isBefore(last.get().arriveBy()));
    if (since) {
      return Ground.STILL_THERE;
    }
    return last.get().isCarriage() ? Ground.CARRIED : Ground.RIDES_ALONG;
  }

  private Obstacle obstacle(Piece piece) {
    if (depth(piece) > worn.depth()) {
      return Obstacle.COLOUR;
    }
    if (situation.fit(need).must()
        && !situation.fit(need).suits(situation.traits(piece).length())) {
      return Obstacle.SIZE;
    }
    boolean elsewhere = !piece.home().equals(need.church());
    if (elsewhere && piece.staysHome()) {
      return Obstacle.STAYS_HOME;
    }
    if (situation.span().journeys().find(piece.home(), need.church()).isEmpty()) {
      return Obstacle.NO_JOURNEY;
    }
    if (piece.away().stream().anyMatch(a -> binds(piece.home(), a.from(), a.until()))) {
      return Obstacle.AWAY;
    }
    if (holds(piece).anyMatch(h -> binds(h.church(), h.window().setOut(), h.window().cleared()))) {
      return Obstacle.HELD;
    }
    if (isWornThen(piece)) {
      return Obstacle.WORN;
    }
    return elsewhere ? Obstacle.JOURNEY : Obstacle.NONE;
  }

  private Stream<Hold> holds(Piece piece) {
    return situation.holds().stream().filter(hold -> hold.piece().equals(piece.code()));
  }

  private boolean isWornThen(Piece piece) {
    return plan.assignments().stream()
        .filter(one -> one.piece().equals(piece))
        .map(Provision::need)
        .anyMatch(
            other -> binds(other.church(), other.window().setOut(), other.window().cleared()));
  }

  /** Whether being there then leaves no time for this need. */
  private boolean binds(ChurchId church, Instant from, Instant until) {
    return !isBefore(until, church, need.church(), need.window().setOut())
        && !isBefore(need.window().cleared(), need.church(), church, from);
  }

  private boolean isBefore(Instant free, ChurchId from, ChurchId to, Instant due) {
    Optional<Duration> way = situation.span().journeys().find(from, to);
    // Taken off the later side: an absence may last to the end of all time.
    return way.isPresent() && !free.isAfter(due.equals(Instant.MAX) ? due : minus(due, way.get()));
  }

  private static Instant minus(Instant due, Duration way) {
    return due.equals(Instant.MIN) ? due : due.minus(way);
  }

  /** One more than the ladder is long where it is not lawful at all. */
  private int depth(Piece piece) {
    if (need.isServedBy(piece.colours())) {
      return 0;
    }
    for (int depth = 1; depth <= need.ladder().size(); depth++) {
      Step step = need.ladder().get(depth - 1);
      if (need.isServedBy(step, piece.colours())) {
        return depth;
      }
    }
    return need.ladder().size() + 1;
  }
}
