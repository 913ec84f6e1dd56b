package vestiary.sending;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.TypedQuery;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;

@ApplicationScoped
class SentPieceRows implements PanacheRepositoryBase<SentPieceRow, UUID> {

  private static final String BOTH =
      "select s, g from SentPieceRow s join SendingRow g on g.id = s.sendingId where ";

  /** The latest first; pieces that went together by code. */
  private static final String LATEST = " order by g.wentAt desc, g.id desc, s.code";

  /** A piece with the sending that it went by. */
  record Both(SentPieceRow piece, SendingRow sending) {}

  /** Every time that one of these went out. */
  List<Both> of(Collection<UUID> pieces) {
    return pieces.isEmpty() ? List.of() : both("s.pieceId in :pieces", Map.of("pieces", pieces));
  }

  /** What is out and not back. */
  List<Both> open() {
    return both("s.backAt is null", Map.of());
  }

  /** What went to another than its owner. */
  List<Both> loans() {
    return both("s.loan", Map.of());
  }

  /** All that went by one sending. */
  List<SentPieceRow> ofSending(UUID sending) {
    return list("sendingId = ?1 order by code", sending);
  }

  /** That of a time out that is not ended; none where it was noted elsewhere. */
  List<SentPieceRow> ofOccupations(Collection<UUID> occupations) {
    return occupations.isEmpty()
        ? List.of()
        : list("occupationId in ?1 order by code", occupations);
  }

  private List<Both> both(String which, Map<String, ?> values) {
    TypedQuery<Object[]> query =
        getEntityManager().createQuery(BOTH + which + LATEST, Object[].class);
    values.forEach(query::setParameter);
    return query
        .getResultStream()
        .map(found -> new Both((SentPieceRow) found[0], (SendingRow) found[1]))
        .toList();
  }
}
