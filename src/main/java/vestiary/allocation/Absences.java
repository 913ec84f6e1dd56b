package vestiary.allocation;

import java.util.List;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Piece;
import vestiary.vesting.Window;

/**
 * When the pieces of a pool are away, as numbers: the same question as {@link Access} answers,
 * asked of every piece for every need.
 */
final class Absences {

  private final Journeys journeys;
  private final int[] homes;
  private final long[][] from;
  private final long[][] until;

  /**
   * @param pieces by their places in the pool
   */
  Absences(List<Piece> pieces, Journeys journeys) {
    this.journeys = journeys;
    this.homes = pieces.stream().mapToInt(piece -> journeys.place(piece.home())).toArray();
    this.from =
        pieces.stream()
            .map(p -> p.away().stream().map(Away::from).mapToLong(Seconds::floor).toArray())
            .toArray(long[][]::new);
    this.until =
        pieces.stream()
            .map(p -> p.away().stream().map(Away::until).mapToLong(Seconds::ceiling).toArray())
            .toArray(long[][]::new);
  }

  /**
   * Whether a piece that can come to the church is away for all or a part of that time, or too
   * shortly before or after for the way.
   */
  boolean hinder(int piece, ChurchId church, Window window) {
    int there = journeys.place(church);
    boolean atHome = homes[piece] < 0 || homes[piece] == there;
    long coming = atHome ? 0 : journeys.seconds(homes[piece], there);
    long going = atHome ? 0 : journeys.seconds(there, homes[piece]);
    long setOut = Seconds.floor(window.setOut());
    long cleared = Seconds.ceiling(window.cleared());
    for (int absence = 0; absence < from[piece].length; absence++) {
      if (until[piece][absence] + coming > setOut && cleared + going > from[piece][absence]) {
        return true;
      }
    }
    return false;
  }
}
