package vestiary.planning;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import vestiary.allocation.ClashCheck;
import vestiary.allocation.Journeys;
import vestiary.allocation.Lying;
import vestiary.allocation.Shortage;
import vestiary.allocation.Span;
import vestiary.cluster.Church;
import vestiary.cluster.Cluster;
import vestiary.pool.PooledPiece;
import vestiary.pool.Taken;
import vestiary.schedule.DatedMass;
import vestiary.vesting.ChurchId;
import vestiary.vesting.KeptKinds;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.VestingNorms;
import vestiary.vesting.VestingPolicies;

/**
 * Everything that decides whether the Masses of a span can be vested, loaded once.
 *
 * @param first first date that was asked for
 * @param last last date that was asked for, included
 * @param masses of the dates asked for and of a day on either side, since what is in use then may
 *     not be back
 * @param kept which kinds of piece each church keeps by list
 * @param taken what is planned, held or out over the same days
 * @param lying where pieces lie over the same days
 */
public record SpanToCheck(
    Cluster cluster,
    List<Church> churches,
    LocalDate first,
    LocalDate last,
    List<DatedMass> masses,
    List<PooledPiece> pieces,
    Journeys journeys,
    KeptKinds kept,
    Taken taken,
    Lying lying) {

  public SpanToCheck {
    churches = List.copyOf(churches);
    masses = List.copyOf(masses);
    pieces = List.copyOf(pieces);
  }

  /** The Masses of the dates that were asked for. */
  public List<DatedMass> asked() {
    return masses.stream().filter(this::isAsked).toList();
  }

  /** Whether it begins on one of the dates that were asked for. */
  public boolean isAsked(DatedMass mass) {
    return !mass.date().isBefore(first) && !mass.date().isAfter(last);
  }

  /** What the norms of vesture ask for at a Mass, in canonical order. */
  public List<Need> needs(DatedMass mass) {
    return VestingNorms.needsOf(mass.toVestedMass(), policies(), kept);
  }

  /** Where a piece lies at a moment of these days: at home, or where it was carried and left. */
  public ChurchId lies(Piece piece, Instant moment) {
    return lying.church(piece, moment);
  }

  List<Shortage> shortages() {
    return Mended.without(shortages(masses), this);
  }

  /** The shortages there would be with these Masses instead, each checked again. */
  List<Shortage> shortages(List<DatedMass> others) {
    Span all = toSpan(others);
    return new CheckedShortages(all).all(ClashCheck.find(all));
  }

  /** What these Masses ask for, and all that there is. */
  public Span toSpan(List<DatedMass> others) {
    return new Span(
        others.stream().flatMap(m -> needs(m).stream()).toList(),
        pieces.stream().map(PooledPiece::toPiece).toList(),
        journeys,
        policies(),
        lying);
  }

  private VestingPolicies policies() {
    return cluster.policies().vesting();
  }
}
