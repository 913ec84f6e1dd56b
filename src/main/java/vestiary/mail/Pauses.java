package vestiary.mail;

import java.time.Duration;
import java.util.List;

/**
 * How long a letter waits after a try that came to nothing: soon at first, since most troubles are
 * short, then every four hours, for five days in all.
 *
 * <p>Source: RFC 5321, 4.5.4.1: a client "needs to" go on for four or five days at least, and may
 * try the first times in quicker turn.
 */
final class Pauses {

  static final Duration LONGEST_WAY = Duration.ofDays(5);

  private static final List<Duration> GROWING =
      List.of(
          Duration.ofMinutes(1),
          Duration.ofMinutes(5),
          Duration.ofMinutes(30),
          Duration.ofHours(1),
          Duration.ofHours(2),
          Duration.ofHours(4));

  private Pauses() {}

  /** The pause after that many tries, 1 or more. */
  static Duration after(int tries) {
    return GROWING.get(Math.min(tries, GROWING.size()) - 1);
  }
}
