package vestiary.allocation.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.Step;
import vestiary.vesting.Window;

/**
 * Tells from a plan why one piece is worn and no other; what can be seen, not what was searched.
 */
public final class WhyThisOne {

  private final Plan plan;
  private final Situation situation;
  private final Map<String, List<Provision.Worn>> worn;
  private final Map<String, List<Hold>> held;

  private WhyThisOne(Plan plan, Situation situation) {
    this.plan = plan;
    this.situation = situation;
    this.worn =
        plan.assignments().stream().collect(Collectors.groupingBy(one -> one.piece().code()));
    this.held = situation.holds().stream().collect(Collectors.groupingBy(Hold::piece));
  }

  /** Tells it of any provision of a plan. */
  public static WhyThisOne in(Plan plan, Situation situation) {
    return new WhyThisOne(plan, situation);
  }

  /** The reason for one provision of the plan. */
  public Reason reason(Provision.Worn one) {
    Optional<Movement> way = one.held() ? Optional.empty() : findWay(one);
    return new Reason(ground(one, way), way, one.source(), others(one));
  }

  private List<Reason.Other> others(Provision.Worn one) {
    return situation.span().pieces().stream()
        .filter(piece -> piece.kind() == one.need().kind() && !piece.equals(one.piece()))
        .map(piece -> new Reason.Other(piece, obstacle(one, piece)))
        .sorted(
            Comparator.comparing(Reason.Other::obstacle)
                .thenComparing(other -> other.piece().code()))
        .toList();
  }

  private static Ground ground(Provision.Worn one, Optional<Movement> way) {
    if (one.held()) {
      return Ground.HELD;
    }
    if (way.isPresent()) {
      return way.get().isCarriage() ? Ground.CARRIED : Ground.RIDES_ALONG;
    }
    return one.piece().home().equals(one.need().church()) ? Ground.AT_HOME : Ground.STILL_THERE;
  }

  /**
   * The journey that brings the piece, unless it was brought for an earlier Mass and has stayed.
   */
  private Optional<Movement> findWay(Provision.Worn one) {
    Window window = one.need().window();
    return plan.movements().stream()
        .filter(move -> move.pieces().contains(one.piece()))
        .filter(move -> !move.arriveBy().isAfter(window.setOut()))
        .reduce((earlier, later) -> later)
        .filter(
            move ->
                worn.get(one.piece().code()).stream()
                    .map(other -> other.need().window())
                    .noneMatch(
                        other ->
                            other.start().isBefore(window.start())
                                && !other.setOut().isBefore(move.arriveBy())));
  }

  private Obstacle obstacle(Provision.Worn one, Piece piece) {
    Need need = one.need();
    if (depth(piece, need) > one.depth()) {
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
    if (piece.keptFrom().contains(need.mass())) {
      return Obstacle.KEPT_BACK;
    }
    if (piece.away().stream().anyMatch(a -> binds(piece.home(), a.from(), a.until(), need))) {
      return Obstacle.AWAY;
    }
    if (holds(piece)
        .anyMatch(h -> binds(h.church(), h.window().setOut(), h.window().cleared(), need))) {
      return Obstacle.HELD;
    }
    if (isWornThen(piece, need)) {
      return Obstacle.WORN;
    }
    return elsewhere ? Obstacle.JOURNEY : Obstacle.NONE;
  }

  private Stream<Hold> holds(Piece piece) {
    return held.getOrDefault(piece.code(), List.of()).stream();
  }

  private boolean isWornThen(Piece piece, Need need) {
    return worn.getOrDefault(piece.code(), List.of()).stream()
        .map(Provision::need)
        .anyMatch(
            other ->
                binds(other.church(), other.window().setOut(), other.window().cleared(), need));
  }

  /** Whether being there then leaves no time for this need. */
  private boolean binds(ChurchId church, Instant from, Instant until, Need need) {
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
  private static int depth(Piece piece, Need need) {
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
