package vestiary.allocation.celebrant;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import vestiary.allocation.Journeys;
import vestiary.vesting.ChurchId;

/**
 * The time a priest needs around a Mass. From one Mass to the next: what comes after the first, the
 * journey, what comes before the second; and never less than a certain time from start to start.
 *
 * <p>Common practice, no source for the minutes: a quarter of an hour on either side for vesting,
 * prayer and greeting people, an hour and a half from start to start.
 *
 * @param before from arriving to the start
 * @param after from the end to leaving
 * @param leastGap from one start to the next
 */
public record Pace(Duration before, Duration after, Duration leastGap) {

  /** What holds unless a cluster says otherwise. */
  public static final Pace USUAL =
      new Pace(Duration.ofMinutes(15), Duration.ofMinutes(15), Duration.ofMinutes(90));

  /** No journey within a cluster is longer. */
  static final Duration A_DAY = Duration.ofHours(24);

  public Pace {
    if (before.isNegative() || after.isNegative() || leastGap.isNegative()) {
      throw new IllegalArgumentException("Time around a Mass cannot be less than none.");
    }
  }

  /**
   * The earliest start in a church of whatever follows a stay; empty if no way leads there. Of the
   * Mass at 8:00 that lasts an hour, 18 minutes away: 9:48.
   */
  public Optional<Instant> findEarliest(Stay first, ChurchId there, Journeys journeys) {
    return journeys
        .find(first.church(), there)
        .map(way -> first.end().plus(after).plus(way).plus(before))
        .map(ready -> later(ready, first.start().plus(leastGap)));
  }

  /**
   * Whether one priest can be at the first and then at the second. A whole day later he can be
   * anywhere, whether a way is known or not.
   */
  public boolean follows(Stay first, Stay second, Journeys journeys) {
    if (!second.start().isBefore(first.end().plus(A_DAY))) {
      return true;
    }
    return findEarliest(first, second.church(), journeys)
        .filter(earliest -> !earliest.isAfter(second.start()))
        .isPresent();
  }

  /** Whether one priest can be at both, in either order. */
  public boolean goTogether(Stay one, Stay other, Journeys journeys) {
    return follows(one, other, journeys) || follows(other, one, journeys);
  }

  private static Instant later(Instant one, Instant other) {
    return one.isAfter(other) ? one : other;
  }
}
