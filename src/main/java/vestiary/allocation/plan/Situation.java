package vestiary.allocation.plan;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import vestiary.allocation.Span;
import vestiary.vesting.AlbLength;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Wearer;

/**
 * All that the planner must know.
 *
 * @param span needs, pieces, journeys and policies
 * @param holds what sacristans have set aside, which no plan touches
 * @param rides journeys somebody makes anyway
 * @param traits of pieces by their code; a piece without any is plain
 * @param occasions what a Mass would like its vestments to be; none if nobody said
 * @param fits what suits a wearer's height; none if nobody said
 * @param albs how long an alb suits a wearer; whoever is not named goes by the size his need
 *     prefers
 * @param last the provisions of the last plan, empty if there is none; a new plan keeps to them as
 *     far as that costs nothing that weighs more
 * @param starts where a piece lies when the span begins, by its code; at home if nobody said, and
 *     always if it never leaves
 */
public record Situation(
    Span span,
    List<Hold> holds,
    List<Ride> rides,
    Map<String, Traits> traits,
    Map<MassId, Occasion> occasions,
    Map<Wearer, Fit> fits,
    Map<Wearer, AlbLength> albs,
    List<Provision> last,
    Map<String, ChurchId> starts) {

  public Situation {
    Objects.requireNonNull(span, "span");
    holds = List.copyOf(holds);
    rides = List.copyOf(rides);
    traits = Map.copyOf(traits);
    occasions = Map.copyOf(occasions);
    fits = Map.copyOf(fits);
    albs = Map.copyOf(albs);
    last = List.copyOf(last);
    starts = Map.copyOf(starts);
  }

  /** Nobody's alb being known. */
  public Situation(
      Span span,
      List<Hold> holds,
      List<Ride> rides,
      Map<String, Traits> traits,
      Map<MassId, Occasion> occasions,
      Map<Wearer, Fit> fits,
      List<Provision> last,
      Map<String, ChurchId> starts) {
    this(span, holds, rides, traits, occasions, fits, Map.of(), last, starts);
  }

  /** All pieces being at home when the span begins. */
  public Situation(
      Span span,
      List<Hold> holds,
      List<Ride> rides,
      Map<String, Traits> traits,
      Map<MassId, Occasion> occasions,
      Map<Wearer, Fit> fits,
      List<Provision> last) {
    this(span, holds, rides, traits, occasions, fits, Map.of(), last, Map.of());
  }

  /** A span with nothing held, nobody driving, and no preferences. */
  public static Situation of(Span span) {
    return new Situation(span, List.of(), List.of(), Map.of(), Map.of(), Map.of(), List.of());
  }

  /** The same with another span. */
  public Situation with(Span other) {
    return new Situation(other, holds, rides, traits, occasions, fits, albs, last, starts);
  }

  /** The same with other holds. */
  public Situation withHolds(List<Hold> others) {
    return new Situation(span, others, rides, traits, occasions, fits, albs, last, starts);
  }

  /** The same with other rides. */
  public Situation withRides(List<Ride> others) {
    return new Situation(span, holds, others, traits, occasions, fits, albs, last, starts);
  }

  /** The same after another plan. */
  public Situation withLast(List<Provision> provisions) {
    return new Situation(span, holds, rides, traits, occasions, fits, albs, provisions, starts);
  }

  /** The same with pieces lying elsewhere when the span begins. */
  public Situation withStarts(Map<String, ChurchId> others) {
    return new Situation(span, holds, rides, traits, occasions, fits, albs, last, others);
  }

  /** Where a piece lies when the span begins. */
  public ChurchId start(Piece piece) {
    return piece.staysHome() ? piece.home() : starts.getOrDefault(piece.code(), piece.home());
  }

  /** Never absent: a piece nobody described is plain. */
  public Traits traits(Piece piece) {
    return traits.getOrDefault(piece.code(), Traits.PLAIN);
  }

  /** Never absent: a Mass nobody described asks nothing. */
  public Occasion occasion(Need need) {
    return occasions.getOrDefault(need.mass(), Occasion.ANY);
  }

  /** Never absent: a wearer nobody described is fitted by everything. */
  public Fit fit(Need need) {
    if (need.kind() == PieceKind.ALB) {
      AlbLength known = albs.getOrDefault(need.wearer(), AlbLength.UNKNOWN);
      return known.isKnown() ? Fit.of(known) : Fit.around(need.preferred().size());
    }
    return fits.getOrDefault(need.wearer(), Fit.ANY);
  }
}
