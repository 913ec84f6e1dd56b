package vestiary.vesting;

import java.time.Instant;
import java.util.Objects;

/**
 * A time in which a piece cannot be used: at the cleaner, being mended, lent outside, held. It
 * leaves from its home and comes back there.
 *
 * @param from included
 * @param until excluded; {@link Instant#MAX} means until further notice
 * @param reason in words for people
 */
public record Away(Instant from, Instant until, String reason) {

  public Away {
    Objects.requireNonNull(reason, "reason");
    if (!from.isBefore(until)) {
      throw new IllegalArgumentException("A piece is away from before until, not " + from);
    }
  }
}
