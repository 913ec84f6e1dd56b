package vestiary.pool;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.problem.Refused;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;

/**
 * Writes down what a reservation takes, each in the present transaction. Whoever wants to take
 * pieces locks them first, and only then looks whether they are free.
 */
@ApplicationScoped
@Transactional(Transactional.TxType.MANDATORY)
public class KeepHeld {

  private final OccupationRows occupations;
  private final PieceRows pieces;
  private final SetRows sets;

  KeepHeld(OccupationRows occupations, PieceRows pieces, SetRows sets) {
    this.occupations = occupations;
    this.pieces = pieces;
    this.sets = sets;
  }

  /**
   * A piece held for a Mass.
   *
   * @param reservation id of that by which it is
   * @param piece its code
   * @param until half-open end
   */
  public record Held(
      UUID reservation, String piece, MassId mass, ChurchId church, Instant from, Instant until) {}

  /**
   * What a reservation takes of one piece.
   *
   * @param until half-open end; {@link Instant#MAX} until further notice
   * @param standing whether it is still so, or care or a remedy has taken the piece from it
   */
  public record Part(
      UUID reservation,
      String piece,
      ChurchId church,
      Instant from,
      Instant until,
      boolean standing) {}

  /**
   * What a code names.
   *
   * @param id of the set or of the piece
   * @param pieces codes of the pieces, in order, one or more
   */
  public record Named(UUID id, String code, List<String> pieces) {
    public Named {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * The set of that code.
   *
   * @throws Refused if there is none
   */
  public Named set(String code) {
    SetRow set = sets.getByCode(code);
    List<PieceRow> within = pieces.list("setId = ?1 order by code", set.id);
    return new Named(set.id, set.code, within.stream().map(row -> row.code).toList());
  }

  /**
   * The piece of that code.
   *
   * @throws Refused if there is none
   */
  public Named piece(String code) {
    PieceRow piece = pieces.getByCode(code);
    return new Named(piece.id, piece.code, List.of(piece.code));
  }

  /** The codes of sets and of pieces, by id. */
  public Map<UUID, String> codes() {
    Map<UUID, String> codes =
        sets.streamAll().collect(Collectors.toMap(set -> set.id, set -> set.code));
    pieces.streamAll().forEach(piece -> codes.put(piece.id, piece.code));
    return codes;
  }

  /**
   * Keeps everybody else from changing what these pieces do until the transaction ends. They are
   * locked in order of their codes, so that no two wait for each other.
   */
  public void lock(Collection<String> codes) {
    if (!codes.isEmpty()) {
      pieces.locked(codes);
    }
  }

  /** Plans that a hold takes the pieces from. */
  public void displace(List<PlannedWear> planned) {
    Map<String, UUID> ids = ids(planned.stream().map(PlannedWear::piece).toList());
    planned.forEach(one -> occupations.displace(ids.get(one.piece()), one));
  }

  /** What ends earlier or begins later, since the piece stays out in the same church. */
  public void shorten(List<Shortened> those) {
    Map<String, UUID> ids = ids(those.stream().map(Shortened::piece).toList());
    those.forEach(one -> occupations.shorten(ids.get(one.piece()), one));
  }

  /** Takes the pieces; the database refuses whatever overlaps. */
  public void hold(List<Held> held) {
    Map<String, UUID> ids = ids(held.stream().map(Held::piece).toList());
    held.forEach(one -> occupations.persist(row(one, ids.get(one.piece()))));
    occupations.flush();
  }

  /** Gives up what is held by a reservation; what is out stays as it is. */
  public void release(UUID reservation) {
    occupations.deleteHeld(reservation);
  }

  /** What reservations take or took in the half-open span, by start, then code. */
  public List<Part> between(Instant from, Instant until) {
    return occupations.reservedBetween(from, until).stream().map(KeepHeld::part).toList();
  }

  /** What one of them takes or took. */
  public List<Part> of(UUID reservation) {
    return occupations.ofReservation(reservation).stream().map(KeepHeld::part).toList();
  }

  /** Where what a reservation takes is now. */
  public enum Place {
    /** All of it in the cupboard, taken from it or not. */
    HELD,
    /** Some of it or all of it out. */
    OUT,
    /** Back, all that was out, and nothing held any more. */
    BACK
  }

  public Place placeOf(UUID reservation) {
    List<OccupationRow> rows =
        occupations.ofReservation(reservation).stream().map(OccupationRows.Coded::row).toList();
    if (rows.stream().anyMatch(OccupationRow::isAwaited)) {
      return Place.OUT;
    }
    boolean held = rows.stream().anyMatch(row -> row.standing && row.isHeld());
    boolean wasOut = rows.stream().anyMatch(OccupationRow::isOut);
    return wasOut && !held ? Place.BACK : Place.HELD;
  }

  private static Part part(OccupationRows.Coded found) {
    OccupationRow row = found.row();
    return new Part(
        row.reservationId,
        found.code(),
        new ChurchId(row.churchId),
        row.starts,
        row.ends == null ? Instant.MAX : row.ends,
        row.standing);
  }

  private Map<String, UUID> ids(List<String> codes) {
    return codes.isEmpty()
        ? Map.of()
        : pieces.list("code in ?1", codes).stream()
            .collect(Collectors.toMap(row -> row.code, row -> row.id));
  }

  private static OccupationRow row(Held one, UUID piece) {
    OccupationRow row = new OccupationRow();
    row.pieceId = piece;
    row.state = OccupationRow.HELD;
    row.starts = one.from();
    row.ends = one.until();
    row.churchId = one.church().value();
    row.massId = one.mass().value();
    row.reservationId = one.reservation();
    return row;
  }
}
