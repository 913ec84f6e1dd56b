package vestiary.allocation;

import java.time.Duration;
import java.util.Objects;
import vestiary.vesting.ChurchId;

/**
 * How long it takes from one church to another, one way.
 *
 * @param time whole seconds, 0 or more
 */
public record Journey(ChurchId from, ChurchId to, Duration time) {

  public Journey {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    if (time.isNegative() || time.getNano() != 0) {
      throw new IllegalArgumentException("A journey takes whole seconds, 0 or more, not " + time);
    }
  }
}
