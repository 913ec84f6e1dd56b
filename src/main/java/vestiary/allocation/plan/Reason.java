package vestiary.allocation.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import vestiary.vesting.Piece;

/**
 * Why a plan has this piece for this need.
 *
 * @param ground how it comes to be there
 * @param way the journey that brings it for this need, if one does
 * @param source the norm behind it
 * @param others all other pieces of the kind, in order of obstacle, then code
 */
public record Reason(Ground ground, Optional<Movement> way, String source, List<Other> others) {

  public Reason {
    Objects.requireNonNull(ground, "ground");
    Objects.requireNonNull(way, "way");
    others = List.copyOf(others);
  }

  /** Another piece, and what stands in its way. */
  public record Other(Piece piece, Obstacle obstacle) {}
}
