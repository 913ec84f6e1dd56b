package vestiary.pool;

import java.time.Instant;
import java.util.List;
import vestiary.vesting.MassId;
import vestiary.vesting.Wearer;

/**
 * A piece that is there for a Mass: planned, held or out.
 *
 * @param piece its code
 * @param wearers who wears it, or none if it is held for the Mass and for nobody in particular
 * @param state {@code planned}, {@code held} or {@code out}
 * @param until half-open end; {@link Instant#MAX} until it is brought back
 */
public record LaidPiece(
    String piece, MassId mass, List<Wearer> wearers, String state, Instant from, Instant until) {

  public LaidPiece {
    wearers = List.copyOf(wearers);
  }
}
