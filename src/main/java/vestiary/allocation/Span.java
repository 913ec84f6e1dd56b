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
 * @param lying where pieces lie that are not at home all the time
 */
public record Span(
    List<Need> needs,
    List<Piece> pieces,
    Journeys journeys,
    VestingPolicies policies,
    Lying lying) {

  public Span {
    needs = List.copyOf(needs);
    pieces = List.copyOf(pieces);
    Objects.requireNonNull(journeys, "journeys");
    Objects.requireNonNull(policies, "policies");
    Objects.requireNonNull(lying, "lying");
  }

  /** Every piece being at home. */
  public Span(List<Need> needs, List<Piece> pieces, Journeys journeys, VestingPolicies policies) {
    this(needs, pieces, journeys, policies, Lying.AT_HOME);
  }

  /** Whether the piece lies at the need's church when that is set out. */
  boolean isThere(Piece piece, Need need) {
    return lying.church(piece, need.window().setOut()).equals(need.church());
  }
}
