package vestiary.pool;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;

/**
 * What takes a piece for a time, as it is kept.
 *
 * @param piece its code
 * @param until half-open end; {@link Instant#MAX} where nobody knows
 * @param reason of care; else empty
 */
public record Standing(
    UUID id,
    String piece,
    State state,
    List<ChurchId> churches,
    List<MassId> masses,
    Instant from,
    Instant until,
    String reason) {

  public Standing {
    churches = List.copyOf(churches);
    masses = List.copyOf(masses);
  }

  /** In the order in which one outweighs another. */
  public enum State {
    PLANNED,
    HELD,
    OUT,
    CARE
  }
}
