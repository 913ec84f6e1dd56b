package vestiary.access;

import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import io.github.bucket4j.TimeMeter;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * How much each of many may ask for in a minute: a full minute's worth at once, and then as it
 * comes in. Counted on this copy of the server alone, and forgotten for whoever has not asked for
 * longest.
 */
final class Allowance {

  /** So many are remembered, some megabytes of them. */
  private static final int MOST_REMEMBERED = 20_000;

  private final int aMinute;
  private final TimeMeter time;
  private final Map<String, Bucket> left =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Bucket> eldest) {
          return size() > MOST_REMEMBERED;
        }
      };

  /**
   * An allowance for each.
   *
   * @param aMinute requests, 1 or more
   */
  Allowance(int aMinute, TimeMeter time) {
    this.aMinute = aMinute;
    this.time = time;
  }

  /** Takes one request of theirs; how long to wait if none is left. */
  Optional<Duration> findPause(String who) {
    ConsumptionProbe taken = of(who).tryConsumeAndReturnRemaining(1);
    return taken.isConsumed()
        ? Optional.empty()
        : Optional.of(Duration.ofNanos(taken.getNanosToWaitForRefill()));
  }

  private synchronized Bucket of(String who) {
    return left.computeIfAbsent(who, w -> full());
  }

  private Bucket full() {
    return Bucket.builder()
        .addLimit(limit -> limit.capacity(aMinute).refillGreedy(aMinute, Duration.ofMinutes(1)))
        .withCustomTimePrecision(time)
        .build();
  }
}
