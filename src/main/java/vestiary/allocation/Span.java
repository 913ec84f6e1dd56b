package vestiary.allocation;

import java.util.List;
import java.util.Objects;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.VestingPolicies;

/**
 * What is asked and what there is over a span of time.
 *
 * @param needs in any order
 * @param pieces in any order, codes unique
 * @param journeys between the churches of both
 * @param policies of the cluster; the turn between two Masses is taken from them
 */
public record Span(
    List<Need> needs, List<Piece> pieces, Journeys journeys, VestingPolicies policies) {

  public Span {
    needs = List.copyOf(needs);
    pieces = List.copyOf(pieces);
    Objects.requireNonNull(journeys, "journeys");
    Objects.requireNonNull(policies, "policies");
  }
}
