package vestiary.planning;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.acceptance.AcceptedStep;
import vestiary.allocation.ClashCheck;
import vestiary.allocation.Journeys;
import vestiary.allocation.Lying;
import vestiary.allocation.Shortage;
import vestiary.allocation.Span;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.remedy.HeldElsewhere;
import vestiary.cluster.Church;
import vestiary.cluster.Cluster;
import vestiary.people.Attendance;
import vestiary.pool.PooledPiece;
import vestiary.pool.SetAside;
import vestiary.pool.Taken;
import vestiary.schedule.DatedMass;
import vestiary.vesting.AlbLength;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
import vestiary.vesting.KeptKinds;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.VestingNorms;
import vestiary.vesting.VestingPolicies;
import vestiary.vesting.Wearer;
import vestiary.vesting.Window;

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
 * @param accepted lawful substitutes accepted for these Masses, whether they still answer anything
 *     or not
 * @param heights of those priests, deacons and bishops of whom they are known, in centimetres, by
 *     their ids
 * @param attendance who is away over the same days
 * @param serving how much anybody may serve
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
    Lying lying,
    List<AcceptedStep> accepted,
    Map<UUID, Integer> heights,
    Attendance attendance,
    Serving serving) {

  public SpanToCheck {
    accepted = List.copyOf(accepted);
    heights = Map.copyOf(heights);
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

  /**
   * What is asked for at a Mass by the norms of vesture and by the lawful substitutes that were
   * accepted by name, in canonical order.
   */
  public List<Need> needs(DatedMass mass) {
    return needsByNorm(mass).stream()
        .flatMap(
            need ->
                findAccepted(need)
                    .map(one -> need.with(one.step()))
                    .orElse(Optional.of(need))
                    .stream())
        .toList();
  }

  /** What the norms of vesture ask for at a Mass, substitutes left aside. */
  List<Need> needsByNorm(DatedMass mass) {
    return VestingNorms.needsOf(mass.toVestedMass(), policies(), kept);
  }

  private Optional<AcceptedStep> findAccepted(Need need) {
    return accepted.stream().filter(one -> one.answers(need)).findFirst();
  }

  /** The same with other Masses, pieces, plans and substitutes: what would be. */
  public SpanToCheck with(List<DatedMass> others, Taken otherwise, List<AcceptedStep> substitutes) {
    return new SpanToCheck(
        cluster,
        churches,
        first,
        last,
        others,
        pieces,
        journeys,
        kept,
        otherwise,
        lying,
        substitutes,
        heights,
        attendance,
        serving);
  }

  /** The same for those who need not know how tall anybody is. */
  public SpanToCheck withoutHeights() {
    return new SpanToCheck(
        cluster,
        churches,
        first,
        last,
        masses,
        pieces,
        journeys,
        kept,
        taken,
        lying,
        accepted,
        Map.of(),
        attendance,
        serving);
  }

  /** The same for some of its dates, as if these alone had been asked for. */
  public SpanToCheck on(LocalDate from, LocalDate to) {
    if (from.equals(first) && to.equals(last)) {
      return this;
    }
    Instant start = from.minusDays(1).atStartOfDay(cluster.zone()).toInstant();
    Instant end = to.plusDays(2).atStartOfDay(cluster.zone()).toInstant();
    List<DatedMass> around =
        masses.stream()
            .filter(
                m -> !m.start().toInstant().isBefore(start) && m.start().toInstant().isBefore(end))
            .toList();
    return new SpanToCheck(
        cluster,
        churches,
        from,
        to,
        around,
        pieces,
        journeys,
        kept,
        taken.between(start, end),
        lying,
        accepted,
        heights,
        attendance,
        serving);
  }

  /** How long an alb suits whoever wears it, as far as his height is known. */
  public AlbLength albLength(DatedMass mass, Wearer wearer) {
    return WearerNames.find(mass, wearer)
        .map(person -> heights.get(person.id()))
        .map(AlbLength::new)
        .orElse(AlbLength.UNKNOWN);
  }

  /** Where a piece lies at a moment of these days: at home, or where it was carried and left. */
  public ChurchId lies(Piece piece, Instant moment) {
    return lying.church(piece, moment);
  }

  /** All that is short as things stand, what is planned and held counted. */
  public List<Shortage> shortages() {
    return Mended.without(shortages(masses), this);
  }

  /** The shortages there would be with these Masses instead, each checked again. */
  List<Shortage> shortages(List<DatedMass> others) {
    Span all = toSpanAsHeld(others);
    return new CheckedShortages(all).all(ClashCheck.find(all));
  }

  /**
   * The same without what is planned or set aside for other churches than its own, and without
   * those for whom it is.
   */
  Span toSpanAsHeld(List<DatedMass> others) {
    return HeldElsewhere.of(toSpan(others), held(others));
  }

  /** What these Masses ask for, and all that there is. */
  public Span toSpan(List<DatedMass> others) {
    Map<String, List<Away>> out =
        taken.setAside().stream()
            .filter(one -> !one.isForMass())
            .collect(
                Collectors.groupingBy(
                    SetAside::piece, Collectors.mapping(SetAside::toAway, Collectors.toList())));
    return new Span(
        others.stream().flatMap(m -> needs(m).stream()).toList(),
        pieces.stream()
            .map(PooledPiece::toPiece)
            .map(piece -> without(piece, out.getOrDefault(piece.code(), List.of())))
            .toList(),
        journeys,
        policies(),
        lying);
  }

  private static Piece without(Piece piece, List<Away> out) {
    return out.isEmpty()
        ? piece
        : piece.away(Stream.concat(piece.away().stream(), out.stream()).toList());
  }

  /** What is planned or set aside for a Mass as it is now; what no longer fits holds nothing. */
  private List<Hold> held(List<DatedMass> others) {
    Map<MassId, DatedMass> byId =
        others.stream().collect(Collectors.toMap(DatedMass::id, Function.identity()));
    Stream<Hold> planned =
        taken.planned().stream()
            .map(
                one ->
                    hold(one.piece(), one.wearer().mass(), one.church(), one.from(), one.until()));
    Stream<Hold> aside =
        taken.setAside().stream()
            .filter(SetAside::isForMass)
            .map(
                one ->
                    hold(
                        one.piece(),
                        one.masses().get(0),
                        one.churches().get(0),
                        one.from(),
                        one.until()));
    return Stream.concat(planned, aside)
        .filter(hold -> !byId.containsKey(hold.mass()) || fits(hold, byId.get(hold.mass())))
        .toList();
  }

  private static Hold hold(
      String piece, MassId mass, ChurchId church, Instant from, Instant until) {
    return new Hold(piece, mass, church, new Window(from, from, until, until));
  }

  private boolean fits(Hold hold, DatedMass mass) {
    Window window = Window.of(mass.toVestedMass(), policies());
    return hold.church().equals(mass.church().id())
        && !hold.window().setOut().isAfter(window.start())
        && !hold.window().cleared().isBefore(window.end());
  }

  private VestingPolicies policies() {
    return cluster.policies().vesting();
  }
}
