package vestiary.schedule;

import java.util.List;
import java.util.UUID;

/**
 * Who celebrates a Mass, with all that goes with him.
 *
 * @param celebrant nobody or one
 * @param lost whether he was removed for good
 * @param brings what is brought by whom
 */
public record CelebrantState(
    UUID mass, List<UUID> celebrant, boolean lost, List<BringsValue> brings) {

  public CelebrantState {
    celebrant = List.copyOf(celebrant);
    brings = List.copyOf(brings);
  }

  static CelebrantState of(MassRow row) {
    return new CelebrantState(
        row.id,
        row.celebrantId == null ? List.of() : List.of(row.celebrantId),
        row.celebrantLost,
        row.brings);
  }
}
