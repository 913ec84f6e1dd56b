package vestiary.allocation.celebrant;

import java.time.Instant;

/**
 * A time in which a priest cannot celebrate here.
 *
 * @param from included
 * @param until excluded; {@link Instant#MAX} means until further notice
 */
public record Absence(Instant from, Instant until) {

  public Absence {
    if (!from.isBefore(until)) {
      throw new IllegalArgumentException("Somebody is away from before until, not " + from);
    }
  }

  /** Whether it touches any moment from {@code start}, included, to {@code end}, excluded. */
  public boolean meets(Instant start, Instant end) {
    return from.isBefore(end) && start.isBefore(until);
  }
}
