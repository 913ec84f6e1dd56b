package vestiary.pool;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.vesting.MassId;
import vestiary.web.Speech;

/**
 * Puts what a plan says in the place of what was planned. What is held, out or in care is never
 * touched: where the plan meets such a thing, nothing is changed at all.
 */
@ApplicationScoped
public class KeepPlanned {

  private final OccupationRows occupations;
  private final MovementRows movements;
  private final PieceRows pieces;
  private final ReadCluster cluster;
  private final Clock clock;

  KeepPlanned(
      OccupationRows occupations,
      MovementRows movements,
      PieceRows pieces,
      ReadCluster cluster,
      Clock clock) {
    this.clock = clock;
    this.occupations = occupations;
    this.movements = movements;
    this.pieces = pieces;
    this.cluster = cluster;
  }

  /**
   * What is replaced.
   *
   * @param from first moment whose planned rows go, included
   * @param until last moment, excluded
   * @param masses whose planned rows go whenever they begin
   */
  public record Part(Instant from, Instant until, List<MassId> masses) {
    public Part {
      masses = List.copyOf(masses);
    }
  }

  /**
   * Replaces a part in the present transaction.
   *
   * @return what was planned there before
   * @throws Refused if a piece is held, out, in care or no longer there
   */
  @Transactional(Transactional.TxType.MANDATORY)
  public Planned replace(Part part, Planned planned) {
    List<OccupationRows.Coded> before = occupations.plannedIn(part);
    Planned replaced =
        new Planned(
            before.stream().filter(found -> found.row().standing).map(ReadTaken::planned).toList(),
            movements.arrivingBetween(part.from(), part.until()));
    occupations.deletePlanned(before.stream().map(found -> found.row().id).toList());
    movements.deleteArrivingBetween(part.from(), part.until());
    Map<String, UUID> ids =
        pieces.byCode().stream().collect(Collectors.toMap(piece -> piece.code, piece -> piece.id));
    refuseIfTaken(planned);
    planned.worn().forEach(one -> occupations.persist(row(one, id(ids, one.piece()))));
    planned.carried().forEach(one -> movements.persist(row(one, id(ids, one.piece()))));
    occupations.flush();
    return replaced;
  }

  /** Tells whose piece is taken at the time. */
  void refuseIfTaken(Planned planned) {
    if (planned.worn().isEmpty()) {
      return;
    }
    Instant from = planned.worn().stream().map(PlannedWear::from).min(order()).orElseThrow();
    Instant until = planned.worn().stream().map(PlannedWear::until).max(order()).orElseThrow();
    Map<String, List<OccupationRow>> standing =
        occupations.standingBetween(from, until).stream()
            .collect(
                Collectors.groupingBy(
                    OccupationRows.Coded::code,
                    Collectors.mapping(OccupationRows.Coded::row, Collectors.toList())));
    for (PlannedWear one : planned.worn()) {
      standing.getOrDefault(one.piece(), List.of()).stream()
          .filter(row -> row.isDuring(one.from(), one.until(), clock.instant()))
          .findFirst()
          .ifPresent(
              row -> {
                throw new Refused(new Refusal.Taken("", taken(one.piece(), row)));
              });
    }
  }

  private static Comparator<Instant> order() {
    return Comparator.naturalOrder();
  }

  private String taken(String piece, OccupationRow row) {
    ZoneId zone = cluster.cluster().zone();
    String state =
        row.state.equals(OccupationRow.CARE) ? say("in care (%s)", row.reason) : row.state;
    String start =
        Speech.day(row.starts.atZone(zone).toLocalDate())
            + ", "
            + Speech.clock(row.starts.atZone(zone));
    return say(
        "%s is %s from %s. Nothing was changed; plan again, and the new plan goes round it.",
        piece, state, start);
  }

  static UUID id(Map<String, UUID> ids, String code) {
    UUID id = ids.get(code);
    if (id == null) {
      throw new Refused(
          new Refusal.Taken(
              "",
              say(
                  "%s is no longer in the pool. Nothing was changed; plan again without it.",
                  code)));
    }
    return id;
  }

  static OccupationRow row(PlannedWear one, UUID piece) {
    OccupationRow row = new OccupationRow();
    row.pieceId = piece;
    row.state = OccupationRow.PLANNED;
    row.starts = one.from();
    row.ends = one.until();
    row.churchId = one.church().value();
    row.massId = one.wearer().mass().value();
    row.role = one.wearer().role().id();
    row.ordinal = one.wearer().ordinal();
    row.depth = one.depth();
    return row;
  }

  static MovementRow row(CarriedPiece one, UUID piece) {
    MovementRow row = new MovementRow();
    row.pieceId = piece;
    row.tripId = one.trip();
    row.fromId = one.from().value();
    row.toId = one.to().value();
    row.ready = one.ready().stream().findFirst().orElse(null);
    row.leaveBy = one.leaveBy();
    row.arriveBy = one.arriveBy();
    row.carrier = one.carrier();
    row.onAsking = one.onAsking();
    return row;
  }
}
