package vestiary.allocation;

import java.time.Instant;
import java.util.Objects;
import vestiary.vesting.Need;

/**
 * Two needs that do not overlap, and yet one piece cannot serve both, for the journey is too long.
 *
 * @param from the earlier
 * @param to the later, at another church
 * @param arrives when the piece would be there; {@link Instant#MAX} where no journey is known
 * @param due set-out of the later, before {@code arrives}
 */
public record LateArrival(Need from, Need to, Instant arrives, Instant due) {

  public LateArrival {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    if (!arrives.isAfter(due)) {
      throw new IllegalArgumentException("Arriving at " + arrives + " is in time for " + due);
    }
  }
}
