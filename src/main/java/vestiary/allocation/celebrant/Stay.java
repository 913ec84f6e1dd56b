package vestiary.allocation.celebrant;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;

/**
 * A Mass or another liturgy as a place in somebody's day.
 *
 * @param date civil date on which it begins
 * @param end after start
 */
public record Stay(MassId mass, ChurchId church, LocalDate date, Instant start, Instant end) {

  public Stay {
    Objects.requireNonNull(mass, "mass");
    Objects.requireNonNull(church, "church");
    Objects.requireNonNull(date, "date");
    if (!start.isBefore(end)) {
      throw new IllegalArgumentException("A Mass ends after its start, not at " + end);
    }
  }
}
