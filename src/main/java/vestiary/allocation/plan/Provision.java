package vestiary.allocation.plan;

import java.util.Optional;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.Step;

/** How a plan answers one need: with a piece, with none, or not at all. */
public sealed interface Provision {

  Need need();

  /** How far down the ladder it is: 0 for what the need asks, 1 for the first substitute. */
  int depth();

  /** The substitute taken, if any. */
  default Optional<Step> findStep() {
    return depth() == 0 ? Optional.empty() : Optional.of(need().ladder().get(depth() - 1));
  }

  /** The piece worn, if any. */
  default Optional<Piece> findPiece() {
    return Optional.empty();
  }

  /** The norm that allows it. */
  default String source() {
    return findStep().map(Step::source).orElse(need().source());
  }

  /**
   * A piece is worn.
   *
   * @param held whether a sacristan has set it aside for this Mass
   */
  record Worn(Need need, Piece piece, int depth, boolean held) implements Provision {
    @Override
    public Optional<Piece> findPiece() {
      return Optional.of(piece);
    }
  }

  /** The piece is lawfully left out. */
  record LeftOut(Need need, int depth) implements Provision {}

  /** Neither the piece nor anything lawful in its stead can be had. */
  record Unmet(Need need) implements Provision {
    @Override
    public int depth() {
      return 0;
    }
  }
}
