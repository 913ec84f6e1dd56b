package vestiary.pool;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.vesting.MassId;

@ApplicationScoped
class ConsentRows implements PanacheRepositoryBase<ConsentRow, UUID> {

  /** The answers for these Masses, by Mass, then code. */
  List<Consent> ofMasses(Collection<UUID> masses) {
    if (masses.isEmpty()) {
      return List.of();
    }
    return getEntityManager()
        .createQuery(
            """
            select c, p.code, p.owner from ConsentRow c join PieceRow p on p.id = c.pieceId
            where c.massId in (:masses) order by c.massId, p.code
            """,
            Object[].class)
        .setParameter("masses", masses)
        .getResultStream()
        .map(found -> consent((ConsentRow) found[0], (String) found[1], (String) found[2]))
        .toList();
  }

  /** The Masses for which pieces are refused, by piece. */
  Map<UUID, Set<MassId>> refused() {
    return stream("state", ConsentRow.REFUSED)
        .collect(
            Collectors.groupingBy(
                row -> row.pieceId,
                Collectors.mapping(row -> new MassId(row.massId), Collectors.toSet())));
  }

  /** The rows of these pieces for one Mass; waits until nobody else changes them. */
  List<ConsentRow> ofMassLocked(UUID mass, Collection<UUID> pieces) {
    return find("massId = ?1 and pieceId in ?2 order by id", mass, pieces)
        .withLock(LockModeType.PESSIMISTIC_WRITE)
        .list();
  }

  private static Consent consent(ConsentRow row, String code, String owner) {
    return new Consent(
        new MassId(row.massId),
        code,
        owner,
        row.state.equals(ConsentRow.GRANTED),
        row.answeredBy,
        row.answeredAt,
        row.version);
  }
}
