package vestiary.pool;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;

/**
 * Pieces that go out, as the pool keeps them. Whoever changes something locks the pieces first, in
 * the present transaction, so that of two people with the same set in their hands the second is
 * told.
 */
@ApplicationScoped
public class OutPieces {

  private final OccupationRows occupations;
  private final PieceRows pieces;
  private final Event<HeldTurned> turned;
  private final Clock clock;

  OutPieces(OccupationRows occupations, PieceRows pieces, Event<HeldTurned> turned, Clock clock) {
    this.occupations = occupations;
    this.pieces = pieces;
    this.turned = turned;
    this.clock = clock;
  }

  /**
   * Where pieces go.
   *
   * @param churches one, or none for outside the cluster
   * @param masses the Mass they go for, or none
   * @param due when they are to be back, after now
   * @param whom who has them outside the cluster; else empty
   */
  public record Going(
      List<ChurchId> churches, List<MassId> masses, Instant from, Instant due, String whom) {
    public Going {
      churches = List.copyOf(churches);
      masses = List.copyOf(masses);
    }
  }

  /**
   * A piece that went.
   *
   * @param displaced what stands no longer since
   */
  public record Gone(UUID piece, UUID occupation, List<UUID> displaced) {}

  /**
   * Keeps everybody else from changing these pieces until the transaction ends.
   *
   * @return their ids by code
   * @throws Refused if one is no longer in the pool
   */
  @Transactional(Transactional.TxType.MANDATORY)
  public Map<String, UUID> lock(Collection<String> codes) {
    Map<String, UUID> ids =
        pieces.locked(codes).stream().collect(Collectors.toMap(row -> row.code, row -> row.id));
    codes.stream()
        .filter(code -> !ids.containsKey(code))
        .findFirst()
        .ifPresent(
            code -> {
              throw new Refused(new Refusal.NotThere("piece", code));
            });
    return ids;
  }

  /** What takes these pieces in some part of the half-open span, by start, then code. */
  @Transactional
  public List<Standing> standing(Collection<String> codes, Instant from, Instant until) {
    Instant now = clock.instant();
    return occupations.standingBetween(from, until).stream()
        .filter(found -> codes.contains(found.code()))
        .map(found -> standing(found, now))
        .toList();
  }

  /** All that is out and not back, by the time at which it went, then code. */
  @Transactional
  public List<OutPiece> all() {
    return occupations.awaited().stream().map(OutPieces::out).toList();
  }

  /**
   * Notes that a locked piece is out from now on; what was planned or held for it meanwhile stands
   * no longer.
   */
  @Transactional(Transactional.TxType.MANDATORY)
  public Gone go(UUID piece, Going going) {
    List<OccupationRow> displaced =
        occupations.plannedOrHeld(List.of(piece), going.from(), going.due());
    displaced.forEach(row -> row.standing = false);
    occupations.flush();
    OccupationRow row = new OccupationRow();
    row.pieceId = piece;
    row.state = OccupationRow.OUT;
    row.starts = going.from();
    row.ends = going.due();
    going.churches().forEach(church -> row.churchId = church.value());
    going.masses().forEach(mass -> row.massId = mass.value());
    row.reason = going.whom();
    displaced.stream()
        .filter(was -> was.massId != null && was.massId.equals(row.massId))
        .findFirst()
        .ifPresent(was -> wear(row, was));
    occupations.persistAndFlush(row);
    tell(row);
    return new Gone(piece, row.id, displaced.stream().map(was -> was.id).toList());
  }

  private void tell(OccupationRow row) {
    if (row.reservationId != null) {
      turned.fire(new HeldTurned(row.reservationId));
    }
  }

  /** Who was to wear it still is, and by what it was held it is out. */
  private static void wear(OccupationRow row, OccupationRow was) {
    row.reservationId = was.reservationId;
    row.role = was.role;
    row.ordinal = was.ordinal;
    row.depth = was.depth;
  }

  /**
   * Takes back that a locked piece went: as if it had never been said.
   *
   * @param displaced what stands again where it still can
   */
  @Transactional(Transactional.TxType.MANDATORY)
  public void forget(UUID piece, UUID occupation, Collection<UUID> displaced) {
    OccupationRow gone = occupations.findById(occupation);
    occupations.delete(gone);
    occupations.flush();
    occupations.listIn(displaced).stream()
        .filter(row -> occupations.isFree(piece, row.id, row.starts, row.ends))
        .forEach(
            row -> {
              row.standing = true;
              occupations.flush();
            });
    tell(gone);
  }

  static OutPiece out(OccupationRows.Coded found) {
    OccupationRow row = found.row();
    return new OutPiece(
        row.id,
        found.code(),
        Stream.ofNullable(row.churchId).map(ChurchId::new).toList(),
        Stream.ofNullable(row.massId).map(MassId::new).toList(),
        row.starts,
        row.ends == null ? Instant.MAX : row.ends);
  }

  private static Standing standing(OccupationRows.Coded found, Instant now) {
    OccupationRow row = found.row();
    return new Standing(
        row.id,
        found.code(),
        Standing.State.valueOf(row.state.toUpperCase(Locale.ROOT)),
        Stream.ofNullable(row.churchId).map(ChurchId::new).toList(),
        Stream.ofNullable(row.massId).map(MassId::new).toList(),
        row.starts,
        row.until(now),
        row.reason);
  }
}
