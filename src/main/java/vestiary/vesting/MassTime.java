package vestiary.vesting;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;

/**
 * When a Mass is, and what its hour asks of the sacristy.
 *
 * @param start first moment of the Mass
 * @param length whole minutes, 5 to 360
 * @param holyDay whether it is a Sunday's or a holy day's, so that the church's own set-out applies
 * @param sacristy the church's own times
 * @param chosenSetOut set-out chosen for this Mass alone; {@link Duration#ZERO} means none chosen
 */
public record MassTime(
    Instant start, Duration length, boolean holyDay, Sacristy sacristy, Duration chosenSetOut) {

  private static final Duration SHORTEST = Duration.ofMinutes(5);
  private static final Duration LONGEST = Duration.ofMinutes(360);

  public MassTime {
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(sacristy, "sacristy");
    Sacristy.requireMinutes(length, "The length of a Mass");
    Sacristy.requireMinutes(chosenSetOut, "The set-out of a Mass");
    if (length.compareTo(SHORTEST) < 0 || length.compareTo(LONGEST) > 0) {
      throw new IllegalArgumentException(
          "A Mass lasts 5 to 360 minutes, not " + length.toMinutes());
    }
  }

  Instant end() {
    return start.plus(length);
  }
}
