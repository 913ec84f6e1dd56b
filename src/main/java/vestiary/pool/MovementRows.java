package vestiary.pool;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import vestiary.vesting.ChurchId;

@ApplicationScoped
class MovementRows implements PanacheRepositoryBase<MovementRow, UUID> {

  private static final String ARRIVING =
      """
      select m, p.code from MovementRow m join PieceRow p on p.id = m.pieceId
      where m.arriveBy >= :from and m.arriveBy < :to %s
      order by m.leaveBy, m.fromId, m.toId, p.code
      """;

  private static final String ON_TRIP =
      """
      select m, p.code from MovementRow m join PieceRow p on p.id = m.pieceId
      where m.tripId = :trip
      """;

  /**
   * What is carried for a Mass that lost the piece, as to the cleaner, is not carried any more;
   * what goes home, or on from there, is.
   */
  private static final String STILL_WANTED =
      """
      and (m.done or m.toId = p.homeId
        or exists (
          select 1 from MovementRow n
          where n.pieceId = m.pieceId and n.fromId = m.toId and n.leaveBy >= m.arriveBy)
        or exists (
          select 1 from OccupationRow o join PieceRow q on q.id = o.pieceId
          where o.standing and o.churchId = m.toId and (o.ends is null or o.ends > m.arriveBy)
            and (q.id = p.id or q.setId = p.setId)))
      """;

  private static final String STOPS =
      """
      select m, p.code from MovementRow m join PieceRow p on p.id = m.pieceId
      where (m.arriveBy >= :from and m.arriveBy < :to
          or m.arriveBy = (
            select max(b.arriveBy) from MovementRow b
            where b.pieceId = m.pieceId and b.arriveBy < :from)) %s
      """;

  /** Those a plan has that arrive in the half-open span, by the hour of leaving, then code. */
  List<CarriedPiece> arrivingBetween(Instant from, Instant to) {
    return arriving("and not m.done", from, to);
  }

  /** All but those whose piece is no longer planned or set aside where they lead. */
  List<CarriedPiece> wantedBetween(Instant from, Instant to) {
    return arriving(STILL_WANTED, from, to);
  }

  /** The pieces of one trip that are still wanted where it leads, by code. */
  List<CarriedPiece> wantedOn(UUID trip) {
    return getEntityManager()
        .createQuery(ON_TRIP + STILL_WANTED + " order by p.code", Object[].class)
        .setParameter("trip", trip)
        .getResultStream()
        .map(found -> carried((MovementRow) found[0], (String) found[1]))
        .toList();
  }

  /** Where each piece was carried in the half-open span, and where last before it. */
  List<Whereabouts> stops(Instant from, Instant to) {
    return getEntityManager()
        .createQuery(STOPS.formatted(STILL_WANTED), Object[].class)
        .setParameter("from", from)
        .setParameter("to", to)
        .getResultStream()
        .map(found -> stop((MovementRow) found[0], (String) found[1]))
        .toList();
  }

  private static Whereabouts stop(MovementRow row, String code) {
    return new Whereabouts(code, new ChurchId(row.toId), row.arriveBy);
  }

  private List<CarriedPiece> arriving(String further, Instant from, Instant to) {
    return getEntityManager()
        .createQuery(ARRIVING.formatted(further), Object[].class)
        .setParameter("from", from)
        .setParameter("to", to)
        .getResultStream()
        .map(found -> carried((MovementRow) found[0], (String) found[1]))
        .toList();
  }

  void deleteArrivingBetween(Instant from, Instant to) {
    delete("arriveBy >= ?1 and arriveBy < ?2 and not done", from, to);
  }

  /** The one told so; none if a plan has replaced it. */
  void delete(UUID piece, CarriedPiece one) {
    delete(
        "pieceId = ?1 and fromId = ?2 and toId = ?3 and leaveBy = ?4 and arriveBy = ?5",
        piece,
        one.from().value(),
        one.to().value(),
        one.leaveBy(),
        one.arriveBy());
  }

  private static CarriedPiece carried(MovementRow row, String code) {
    return new CarriedPiece(
        code,
        new ChurchId(row.fromId),
        new ChurchId(row.toId),
        Stream.ofNullable(row.ready).toList(),
        row.leaveBy,
        row.arriveBy,
        row.carrier,
        row.onAsking);
  }
}
