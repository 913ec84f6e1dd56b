package vestiary.allocation.plan;

import java.time.Instant;
import java.util.Objects;
import vestiary.vesting.ChurchId;

/**
 * A piece that would have to be in two places: set aside or away at one while it cannot have left
 * the other.
 *
 * @param piece its code
 * @param from where it is before
 * @param free when it can leave there
 * @param to where it must be next
 * @param due when it must be there
 */
public record Contradiction(String piece, ChurchId from, Instant free, ChurchId to, Instant due) {

  public Contradiction {
    Objects.requireNonNull(piece, "piece");
  }
}
