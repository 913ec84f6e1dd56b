package vestiary.pool;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.TypedQuery;
import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;

@ApplicationScoped
class OccupationRows implements PanacheRepositoryBase<OccupationRow, UUID> {

  /** Beyond every date that the calendar knows, and within those that the database does. */
  static final Instant FAR_AHEAD = Instant.parse("9999-12-31T00:00:00Z");

  private static final String WITH_CODE =
      "select o, p.code from OccupationRow o join PieceRow p on p.id = o.pieceId where ";

  /** What is out and overdue keeps its piece away until its return is noted. */
  private static final String TAKES_PART =
      " and o.starts < :until and (o.ends is null or o.ends > :from"
          + " or o.state = 'out' and o.returnedAt is null and o.ends <= :now)";

  private static final String STOPS =
      """
      select o, p.code, p.homeId from OccupationRow o join PieceRow p on p.id = o.pieceId
      where o.standing
        and (o.starts >= :from and o.starts < :until
          or o.starts = (
            select max(b.starts) from OccupationRow b
            where b.pieceId = o.pieceId and b.standing and b.starts < :from))
      """;

  /** A row with the code of its piece. */
  record Coded(OccupationRow row, String code) {}

  private final Clock clock;

  OccupationRows(Clock clock) {
    this.clock = clock;
  }

  /** What stands in the half-open span and is not care, by start, then code. */
  List<Coded> takenBetween(Instant from, Instant until) {
    return coded(
        "o.state in ('planned', 'held', 'out') and o.standing" + TAKES_PART,
        Map.of("from", from, "until", until, "now", clock.instant()));
  }

  /** What stands in the half-open span and no plan may touch. */
  List<Coded> standingBetween(Instant from, Instant until) {
    return coded(
        "o.standing" + TAKES_PART, Map.of("from", from, "until", until, "now", clock.instant()));
  }

  /** What is out and not back, by start, then code. */
  List<Coded> awaited() {
    return coded("o.state = 'out' and o.standing and o.returnedAt is null", Map.of());
  }

  /** The same of these pieces, as the database has it now. */
  List<OccupationRow> awaitedOf(Collection<UUID> pieces) {
    return list(
        "state = 'out' and standing and returnedAt is null and pieceId in ?1 order by starts, id",
        pieces);
  }

  /** What stood for Masses and was over in the half-open span. */
  List<OccupationRow> overBetween(Instant from, Instant until) {
    return list(
        "standing and massId is not null and state in ('planned', 'held', 'out')"
            + " and starts >= ?1 and ends <= ?2",
        from,
        until);
  }

  /** The same of one piece, of all times before that moment. */
  List<OccupationRow> overOf(UUID piece, Instant until) {
    return list(
        "pieceId = ?1 and standing and massId is not null and state in ('planned', 'held', 'out')"
            + " and ends <= ?2",
        piece,
        until);
  }

  /** Those of these that are still held and no more than held. */
  int deleteHeld(Collection<UUID> ids) {
    return ids.isEmpty() ? 0 : (int) delete("id in ?1 and state = 'held'", ids);
  }

  /** What stands for these Masses and is not care, by start, then code. */
  List<Coded> standingFor(Collection<MassId> masses) {
    return coded(
        "o.standing and o.state in ('planned', 'held', 'out') and o.massId in (:masses)",
        Map.of("masses", masses.stream().map(MassId::value).toList()));
  }

  /** What is planned in a part, standing or not, by start, then code. */
  List<Coded> plannedIn(KeepPlanned.Part part) {
    return coded(
        "o.state = 'planned'"
            + " and (o.starts >= :from and o.starts < :until or o.massId in (:masses))",
        Map.of(
            "from",
            part.from(),
            "until",
            part.until(),
            "masses",
            part.masses().stream().map(MassId::value).toList()));
  }

  void deletePlanned(List<UUID> ids) {
    if (!ids.isEmpty()) {
      delete("id in ?1", ids);
    }
  }

  /** The one planned so; none if a plan has replaced it. */
  void deletePlanned(UUID piece, PlannedWear one) {
    delete(
        "state = 'planned' and pieceId = ?1 and massId = ?2 and starts = ?3 and ends = ?4",
        piece,
        one.wearer().mass().value(),
        one.from(),
        one.until());
  }

  /** Holds that begin then, for that Mass: whether they stand. */
  int setStanding(SetAside held, boolean standing) {
    return update(
        "standing = ?1 where state = 'held' and standing <> ?1 and starts = ?2"
            + " and massId in (?3) and pieceId in (select p.id from PieceRow p where p.code = ?4)",
        standing,
        held.from(),
        held.masses().stream().map(MassId::value).toList(),
        held.piece());
  }

  private List<Coded> coded(String which, Map<String, ?> values) {
    TypedQuery<Object[]> query =
        getEntityManager()
            .createQuery(WITH_CODE + which + " order by o.starts, p.code", Object[].class);
    values.forEach(query::setParameter);
    return query
        .getResultStream()
        .map(found -> new Coded((OccupationRow) found[0], (String) found[1]))
        .toList();
  }

  /** Where each piece is from a moment of the half-open span on, and where it was last before. */
  List<Whereabouts> stops(Instant from, Instant until) {
    return getEntityManager()
        .createQuery(STOPS, Object[].class)
        .setParameter("from", from)
        .setParameter("until", until)
        .getResultStream()
        .flatMap(found -> stops((OccupationRow) found[0], (String) found[1], (UUID) found[2]))
        .toList();
  }

  /**
   * Outside the cluster it comes from home and goes back there; what is out for no Mass is home
   * again when it is due.
   */
  private static Stream<Whereabouts> stops(OccupationRow row, String code, UUID home) {
    UUID church = row.churchId == null ? home : row.churchId;
    Whereabouts there = new Whereabouts(code, new ChurchId(church), row.starts);
    return row.isAwaited() && row.massId == null && row.ends != null
        ? Stream.of(there, new Whereabouts(code, new ChurchId(home), row.ends))
        : Stream.of(there);
  }

  /**
   * Standing care of all pieces that is not over by that moment, or awaited or lent and not back,
   * by start.
   */
  List<OccupationRow> careAfter(Instant moment) {
    return list(
        "state = ?1 and standing"
            + " and (ends is null or ends > ?2 or awaited or lendingId is not null)"
            + " order by starts, id",
        OccupationRow.CARE,
        moment);
  }

  List<OccupationRow> careOf(UUID piece) {
    return list(
        "state = ?1 and standing and pieceId = ?2 order by starts, id", OccupationRow.CARE, piece);
  }

  Optional<OccupationRow> findCare(UUID piece, Instant starts) {
    return find(
            "state = ?1 and standing and pieceId = ?2 and starts = ?3",
            OccupationRow.CARE,
            piece,
            starts)
        .firstResultOptional();
  }

  /** Plans of these pieces for one Mass, which their owner does not let them go to. */
  void unplan(UUID mass, Collection<UUID> pieces) {
    update(
        "standing = false where massId = ?1 and pieceId in ?2 and state = 'planned' and standing",
        mass,
        pieces);
  }

  /**
   * What is out when care begins is out no longer: it lies where it was out to, until it is carried
   * on.
   */
  void bringBack(OccupationRow care) {
    Instant until = care.ends;
    for (OccupationRow out :
        list(
            "state = 'out' and standing and pieceId = ?1 and (ends is null or ends > ?2) order by starts",
            care.pieceId,
            care.starts)) {
      if (out.starts.isBefore(care.starts)) {
        out.ends = care.starts;
        care.churchId = out.churchId;
      } else if (until == null || out.starts.isBefore(until)) {
        out.standing = false;
      }
    }
    flush();
  }

  /**
   * The Masses that lost a piece for the time of its care, by their ids; plans made since apart.
   */
  List<MassId> lostBy(OccupationRow care) {
    return getEntityManager()
        .createQuery(
            "select distinct o.massId from OccupationRow o where o.pieceId = :piece"
                + " and not o.standing and o.massId is not null and o.starts >= :from"
                + " and o.starts < :until",
            UUID.class)
        .setParameter("piece", care.pieceId)
        .setParameter("from", care.starts)
        .setParameter("until", care.ends == null ? FAR_AHEAD : care.ends)
        .getResultStream()
        .map(MassId::new)
        .toList();
  }

  /**
   * Breaks plans and holds: a report of damage is never refused.
   *
   * @return those that stand no longer
   */
  List<OccupationRow> displace(UUID piece, Instant from, Instant to) {
    List<OccupationRow> broken = plannedOrHeld(List.of(piece), from, to);
    broken.forEach(row -> row.standing = false);
    flush();
    return broken;
  }

  /** What is held for later and was broken by that care, by start. */
  List<OccupationRow> heldBrokenBy(UUID care, Instant now) {
    return list(
        "brokenBy = ?1 and state = 'held' and not standing and ends > ?2 order by starts, id",
        care,
        now);
  }

  /** What a plan has one piece do, which stands no longer. */
  void displace(UUID piece, PlannedWear one) {
    update(
        "standing = false where state = 'planned' and standing and pieceId = ?1 and massId = ?2"
            + " and starts = ?3 and ends = ?4",
        piece,
        one.wearer().mass().value(),
        one.from(),
        one.until());
  }

  /** Makes what stands of one piece from that moment on shorter. */
  void shorten(UUID piece, Shortened one) {
    update(
        "starts = ?1, ends = ?2 where standing and pieceId = ?3 and starts = ?4"
            + " and state in ('planned', 'held')",
        one.from(),
        one.until(),
        piece,
        one.since());
  }

  /** What is held by a reservation, standing or not. */
  void deleteHeld(UUID reservation) {
    delete("reservationId = ?1 and state = 'held'", reservation);
  }

  /** What reservations take or took in the half-open span, by start, then code. */
  List<Coded> reservedBetween(Instant from, Instant until) {
    return coded(
        "o.reservationId is not null and o.starts < :until and (o.ends is null or o.ends > :from)",
        Map.of("from", from, "until", until));
  }

  /** The same of one reservation, whenever. */
  List<Coded> ofReservation(UUID reservation) {
    return coded("o.reservationId = :reservation", Map.of("reservation", reservation));
  }

  /** What is planned or held of these pieces in the half-open span. */
  List<OccupationRow> plannedOrHeld(Collection<UUID> of, Instant from, Instant until) {
    return list(
        "pieceId in ?1 and state in ('planned', 'held') and standing"
            + " and starts < ?2 and (ends is null or ends > ?3) order by starts, id",
        of,
        until,
        from);
  }

  List<OccupationRow> listIn(Collection<UUID> ids) {
    return ids.isEmpty() ? List.of() : list("id in ?1 order by starts, id", ids);
  }

  /** Whether nothing else of the piece stands in the half-open span. */
  boolean isFree(UUID piece, UUID except, Instant from, Instant until) {
    return count(
            "pieceId = ?1 and id <> ?2 and standing and (ends is null or ends > ?3) and starts < ?4",
            piece,
            except,
            from,
            until == null ? FAR_AHEAD : until)
        == 0;
  }

  /** When the next of the piece's rows begins after this one ends, if before that moment. */
  Optional<Instant> firstAfter(OccupationRow row, Instant before) {
    return find(
            "pieceId = ?1 and id <> ?2 and standing and starts >= ?3 and starts < ?4 order by starts",
            row.pieceId,
            row.id,
            row.ends,
            before)
        .firstResultOptional()
        .map(next -> next.starts);
  }
}
