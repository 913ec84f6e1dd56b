package vestiary.people;

import java.time.Instant;
import java.util.UUID;

/**
 * A time in which a person is not available. Why is not said here, since few may know it: {@link
 * ReadAbsences#reasons}.
 *
 * @param person id of whoever is away
 * @param from when it begins
 * @param to when the person is back, not included; {@link #UNKNOWN} until somebody knows
 */
public record Absence(UUID id, UUID person, Instant from, Instant to) {

  /** Later than all that is planned. */
  public static final Instant UNKNOWN = Instant.parse("9999-12-31T00:00:00Z");

  /** Whether nobody knows yet when it ends. */
  public boolean isOpen() {
    return to.equals(UNKNOWN);
  }

  /** Whether it has any moment in common with that time, whose end is not included. */
  public boolean meets(Instant begin, Instant end) {
    return from.isBefore(end) && to.isAfter(begin);
  }
}
