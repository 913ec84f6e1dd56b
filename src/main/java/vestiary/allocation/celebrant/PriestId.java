package vestiary.allocation.celebrant;

import java.util.Objects;
import java.util.UUID;

/** Which priest. */
public record PriestId(UUID value) implements Comparable<PriestId> {

  public PriestId {
    Objects.requireNonNull(value, "value");
  }

  @Override
  public int compareTo(PriestId other) {
    return value.compareTo(other.value);
  }
}
