package vestiary.allocation.remedy;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import vestiary.allocation.Shortage;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;

/** Other hours at which the Masses of a shortage could begin. */
final class OtherHours {

  private static final int ROUND_MINUTES = 5;

  private final Shortage shortage;
  private final Situation situation;
  private final Leeway leeway;

  OtherHours(Shortage shortage, Situation situation, Leeway leeway) {
    this.shortage = shortage;
    this.situation = situation;
    this.leeway = leeway;
  }

  /**
   * Hours for one Mass, the nearest first. Only at those minutes does it become possible to carry a
   * piece from one Mass to another; they are rounded to the next five minutes.
   */
  List<Change.MoveStart> of(MassId mass) {
    Need need =
        shortage.needs().stream().filter(n -> n.mass().equals(mass)).findFirst().orElseThrow();
    Set<Long> shifts =
        new TreeSet<>(
            Comparator.comparing((Long minutes) -> Math.abs(minutes))
                .thenComparing(Comparator.reverseOrder()));
    shortage.needs().stream()
        .filter(other -> !other.mass().equals(mass))
        .forEach(other -> shifts.addAll(shifts(need, other)));
    return shifts.stream()
        .filter(minutes -> minutes != 0)
        .map(minutes -> new Change.MoveStart(mass, Duration.ofMinutes(minutes)))
        .filter(move -> leeway.allows(move, need.window()))
        .toList();
  }

  private List<Long> shifts(Need need, Need other) {
    Duration turn = situation.span().policies().turn();
    List<Long> shifts = new ArrayList<>();
    if (need.church().equals(other.church())) {
      shifts.add(later(need.window().start(), other.window().end().plus(turn)));
      shifts.add(earlier(need.window().end().plus(turn), other.window().start()));
      return shifts;
    }
    situation
        .span()
        .journeys()
        .find(other.church(), need.church())
        .ifPresent(
            time -> shifts.add(later(need.window().setOut(), other.window().cleared().plus(time))));
    situation
        .span()
        .journeys()
        .find(need.church(), other.church())
        .ifPresent(
            time ->
                shifts.add(earlier(need.window().cleared().plus(time), other.window().setOut())));
    return shifts;
  }

  /** Minutes by which the one moment must come later so as not to be before the other. */
  private static long later(Instant one, Instant other) {
    long minutes = Math.max(0, ceiling(Duration.between(one, other)));
    return (minutes + ROUND_MINUTES - 1) / ROUND_MINUTES * ROUND_MINUTES;
  }

  /** Minutes, 0 or less, by which the one must come earlier so as not to be after the other. */
  private static long earlier(Instant one, Instant other) {
    return -later(other, one);
  }

  private static long ceiling(Duration time) {
    return (time.toSeconds() + 59) / 60;
  }
}
