package vestiary.telling;

import java.time.Duration;
import java.time.Instant;

/**
 * When changes are told: once nobody has changed anything for a few minutes, or after a quarter of
 * an hour at the latest, so that ten changes are one letter.
 */
final class Quiet {

  private static final Duration QUIET = Duration.ofMinutes(5);
  private static final Duration LATEST = Duration.ofMinutes(15);

  private Quiet() {}

  /** Whether it is time to tell what was changed between these moments. */
  static boolean since(Instant first, Instant last, Instant now) {
    return !last.plus(QUIET).isAfter(now) || !first.plus(LATEST).isAfter(now);
  }
}
