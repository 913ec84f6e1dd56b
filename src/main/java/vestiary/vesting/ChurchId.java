package vestiary.vesting;

import java.util.Objects;
import java.util.UUID;

/** Which church is meant. The order is that of the identifiers, no more. */
public record ChurchId(UUID value) implements Comparable<ChurchId> {

  public ChurchId {
    Objects.requireNonNull(value, "value");
  }

  @Override
  public int compareTo(ChurchId other) {
    return value.compareTo(other.value);
  }
}
