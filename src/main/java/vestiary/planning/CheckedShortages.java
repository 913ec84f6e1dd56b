package vestiary.planning;

import java.util.List;
import java.util.function.Predicate;
import org.jboss.logging.Logger;
import vestiary.allocation.Certificate;
import vestiary.allocation.Shortage;
import vestiary.allocation.ShortageProof;
import vestiary.allocation.Span;
import vestiary.vesting.Piece;

/**
 * Checks every shortage again before it is shown, since a warning is a proof. One that does not
 * hold is our fault: it is logged, and shown as not proven.
 */
final class CheckedShortages {

  private static final Logger LOG = Logger.getLogger(CheckedShortages.class);

  private final ShortageProof proof;

  CheckedShortages(Span span) {
    this.proof = ShortageProof.of(span);
  }

  List<Shortage> all(List<Shortage> found) {
    return found.stream().map(one -> checked(one, proof.findObjections(one))).toList();
  }

  /**
   * @param isThere whether a piece is at the church of a local finding, as planned or held
   */
  Shortage checked(Shortage found, Predicate<Piece> isThere) {
    return checked(found, proof.findObjections(found, isThere));
  }

  private static Shortage checked(Shortage found, List<String> objections) {
    if (objections.isEmpty()) {
      return found;
    }
    LOG.errorf(
        "The proof of a shortage of %s for the Masses %s does not hold: %s",
        found.pieceKind().id(), found.masses(), String.join("; ", objections));
    return found.with(new Certificate.Unproven());
  }
}
