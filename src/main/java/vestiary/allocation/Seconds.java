package vestiary.allocation;

import java.time.Instant;

/** Instants as whole seconds, since their sum with a journey must not run past the calendar. */
final class Seconds {

  private Seconds() {}

  /** Rounded down, for moments by which something must be ready or gone. */
  static long floor(Instant instant) {
    return instant.getEpochSecond();
  }

  /** Rounded up, for moments from which something is free. */
  static long ceiling(Instant instant) {
    return instant.getEpochSecond() + (instant.getNano() > 0 ? 1 : 0);
  }
}
