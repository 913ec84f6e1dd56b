package vestiary.pool;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.calendar.Colour;
import vestiary.calendar.Term;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.PieceKind;

/** The vestments of the cluster. */
@ApplicationScoped
@Transactional
public class ReadPool {

  private final PieceRows pieces;
  private final SetRows sets;
  private final SuitRows suits;
  private final OccupationRows occupations;
  private final ConsentRows consents;
  private final Clock clock;

  ReadPool(
      PieceRows pieces,
      SetRows sets,
      SuitRows suits,
      OccupationRows occupations,
      ConsentRows consents,
      Clock clock) {
    this.pieces = pieces;
    this.sets = sets;
    this.suits = suits;
    this.occupations = occupations;
    this.consents = consents;
    this.clock = clock;
  }

  /**
   * All pieces in use by code, with the care that is not over.
   *
   * @param moment from when on care matters
   */
  public List<PooledPiece> pieces(Instant moment) {
    Map<UUID, List<OccupationRow>> care =
        occupations.careAfter(moment).stream().collect(Collectors.groupingBy(o -> o.pieceId));
    Map<UUID, SetRow> byId = sets.streamAll().collect(Collectors.toMap(s -> s.id, s -> s));
    Map<UUID, String> names = suits.streamAll().collect(Collectors.toMap(s -> s.id, s -> s.name));
    Map<UUID, Set<MassId>> refused = consents.refused();
    return pieces.byCode().stream()
        .map(
            p ->
                pooled(
                    p,
                    byId.get(p.setId),
                    names,
                    refused.getOrDefault(p.id, Set.of()),
                    care.getOrDefault(p.id, List.of())))
        .toList();
  }

  /** By what other rooms know the pieces, by their codes; what is withdrawn among them. */
  public Map<String, UUID> ids() {
    return pieces.streamAll().collect(Collectors.toMap(p -> p.code, p -> p.id));
  }

  /** The codes of what is borrowed from another cluster, which alone describes it. */
  public Set<String> borrowed() {
    return pieces.byCode().stream()
        .filter(p -> p.lendingId != null)
        .map(p -> p.code)
        .collect(Collectors.toSet());
  }

  /** Whatever was withdrawn from use, by code. */
  public List<PooledPiece> withdrawn() {
    return pieces.withdrawn().stream()
        .map(p -> pooled(p, null, Map.of(), Set.of(), List.of()))
        .toList();
  }

  /**
   * By what the history knows the piece that an address names.
   *
   * @throws vestiary.problem.Refused if there is none
   */
  public UUID id(String code) {
    return pieces.getByCode(code).id;
  }

  /**
   * The piece that an address names, with all its care, past included.
   *
   * @throws vestiary.problem.Refused if there is none
   */
  public PooledPiece get(String code) {
    PieceRow row = pieces.getByCode(code);
    SetRow set = row.setId == null ? null : sets.findById(row.setId);
    Map<UUID, String> names =
        set == null || set.suitId == null
            ? Map.of()
            : Map.of(set.suitId, suits.findById(set.suitId).name);
    return pooled(
        row,
        set,
        names,
        consents.refused().getOrDefault(row.id, Set.of()),
        occupations.careOf(row.id));
  }

  /** The names of those sets that have one, by their codes. */
  public Map<String, String> setNames() {
    return sets.streamAll()
        .filter(s -> !s.name.isEmpty())
        .collect(Collectors.toMap(s -> s.code, s -> s.name));
  }

  /** The codes of all sets, in order. */
  public List<String> setCodes() {
    return sets.streamAll().map(s -> s.code).sorted().toList();
  }

  private PooledPiece pooled(
      PieceRow row,
      SetRow set,
      Map<UUID, String> suits,
      Set<MassId> keptFrom,
      List<OccupationRow> care) {
    Optional<SetRow> within = Optional.ofNullable(set);
    return new PooledPiece(
        row.code,
        Term.find(PieceKind.class, row.kind).orElseThrow(),
        Stream.of(row.colours).map(c -> Term.find(Colour.class, c).orElseThrow()).toList(),
        row.shade,
        row.grade,
        row.size,
        row.form,
        within.map(s -> s.code).orElse(""),
        within.map(s -> s.suitId).map(suits::get).orElse(""),
        new ChurchId(row.homeId),
        row.owner,
        Term.find(OwnerPolicy.class, row.ownerPolicy).orElseThrow(),
        row.condition,
        row.place,
        row.staysHome,
        keptFrom,
        care.stream().map(c -> care(c, row)).toList(),
        row.version,
        new Particulars(row.description, row.provenance, row.acquired, row.precious, row.keeper),
        row.withdrawnOn == null
            ? List.of()
            : List.of(new Withdrawn(row.withdrawnOn, row.withdrawnReason, row.withdrawnTo)));
  }

  /** What is lent or awaited is away until somebody says that it is back. */
  private Care care(OccupationRow row, PieceRow piece) {
    boolean lentAndLate =
        row.lendingId != null
            && piece.lendingId == null
            && row.ends != null
            && !row.ends.isAfter(clock.instant());
    if (lentAndLate) {
      return Care.late(row, piece.code).overdue();
    }
    return row.isLateAt(clock.instant()) ? Care.late(row, piece.code) : Care.of(row, piece.code);
  }
}
