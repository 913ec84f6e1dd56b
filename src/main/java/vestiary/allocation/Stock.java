package vestiary.allocation;

import java.util.List;
import vestiary.vesting.Piece;

/**
 * All pieces of the kind and colours a finding asks for, told apart by what they can do; each in
 * order of code and in one list only.
 *
 * @param pieces those counted as available: each serves at least one of the needs
 * @param elsewhere of a local finding, those of other churches that can be carried there; of a
 *     cluster finding none, since they are counted already
 * @param notServing all others
 */
public record Stock(List<Piece> pieces, List<Piece> elsewhere, List<NotServing> notServing) {

  public Stock {
    pieces = List.copyOf(pieces);
    elsewhere = OnDemand.orCopyOf(elsewhere);
    notServing = OnDemand.orCopyOf(notServing);
  }
}
