package vestiary.allocation.plan;

import java.time.Instant;
import java.util.Objects;
import vestiary.vesting.ChurchId;

/**
 * A journey that somebody makes anyway and on which vestments ride along for nothing.
 *
 * @param who as people call him
 * @param departs when he leaves
 * @param arrives after he leaves
 */
public record Ride(String who, ChurchId from, ChurchId to, Instant departs, Instant arrives) {

  public Ride {
    Objects.requireNonNull(who, "who");
    if (from.equals(to) || !departs.isBefore(arrives)) {
      throw new IllegalArgumentException(
          "A ride leads to another church and takes time, not from "
              + String.join(" to ", from + " at " + departs, to + " at " + arrives));
    }
  }
}
