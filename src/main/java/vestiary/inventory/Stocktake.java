package vestiary.inventory;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import vestiary.vesting.ChurchId;

/**
 * One walk through a sacristy.
 *
 * @param heldOn the date of the inventory, or none while it is under way
 * @param closedBy mark of the visitor who closed it; empty while it is under way
 * @param elsewhere made on paper or in another list, so that it has no lines
 * @param lines in the order of places, then codes; empty where only the stocktake itself was asked
 *     for
 */
public record Stocktake(
    UUID id,
    ChurchId church,
    Instant begunAt,
    List<LocalDate> heldOn,
    String closedBy,
    boolean elsewhere,
    List<StocktakeLine> lines) {

  public Stocktake {
    heldOn = List.copyOf(heldOn);
    lines = List.copyOf(lines);
  }

  public boolean isClosed() {
    return !heldOn.isEmpty();
  }

  /** Pieces that nobody has looked for yet. */
  public List<StocktakeLine> left() {
    return lines.stream().filter(line -> !line.isLookedFor()).toList();
  }

  public List<StocktakeLine> differences() {
    return lines.stream().filter(StocktakeLine::isDifference).toList();
  }

  public List<StocktakeLine> open() {
    return lines.stream().filter(StocktakeLine::isOpen).toList();
  }
}
