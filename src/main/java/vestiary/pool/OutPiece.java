package vestiary.pool;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;

/**
 * A piece that is out and not back.
 *
 * @param id of its occupation
 * @param piece its code
 * @param churches where it went, or none if outside the cluster
 * @param masses the Mass it went for, or none if for no Mass
 * @param due when it is to be back
 */
public record OutPiece(
    UUID id,
    String piece,
    List<ChurchId> churches,
    List<MassId> masses,
    Instant from,
    Instant due) {

  public OutPiece {
    churches = List.copyOf(churches);
    masses = List.copyOf(masses);
  }

  /** Whether it should be back by now. */
  public boolean isOverdue(Instant now) {
    return !due.isAfter(now);
  }
}
