package vestiary.inventory;

import java.util.List;
import java.util.UUID;

/**
 * One piece in a stocktake.
 *
 * @param code of the piece, as it is now
 * @param place where it is looked for; empty if nobody said
 * @param expected whether it is at home there
 * @param finding what was seen, or none while nobody has looked
 * @param note where it was found, or what is wrong with it; may be empty
 * @param settled what was done about it, as a sentence; empty while nothing was
 */
public record StocktakeLine(
    UUID id,
    String code,
    String place,
    boolean expected,
    List<Finding> finding,
    String note,
    String settled) {

  public StocktakeLine {
    finding = List.copyOf(finding);
  }

  public boolean isLookedFor() {
    return !finding.isEmpty();
  }

  /** Whether the list and the sacristy differ. */
  public boolean isDifference() {
    return isLookedFor() && (!expected || finding.get(0) != Finding.THERE);
  }

  public boolean isOpen() {
    return isDifference() && settled.isEmpty();
  }
}
