package vestiary.vesting;

import java.util.Objects;
import java.util.UUID;

/** Which Mass, or other liturgy, is meant. The order is that of the identifiers, no more. */
public record MassId(UUID value) implements Comparable<MassId> {

  public MassId {
    Objects.requireNonNull(value, "value");
  }

  @Override
  public int compareTo(MassId other) {
    return value.compareTo(other.value);
  }
}
