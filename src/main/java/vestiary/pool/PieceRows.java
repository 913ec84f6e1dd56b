package vestiary.pool;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import io.quarkus.panache.common.Sort;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

@ApplicationScoped
class PieceRows implements PanacheRepositoryBase<PieceRow, UUID> {

  /** Those that are in use, by code; what is withdrawn is not. */
  List<PieceRow> byCode() {
    return list("withdrawnOn is null", Sort.by("code"));
  }

  /** Those of a set that are in use, by code. */
  List<PieceRow> ofSet(UUID set) {
    return list("setId = ?1 and withdrawnOn is null order by code", set);
  }

  List<PieceRow> withdrawn() {
    return list("withdrawnOn is not null", Sort.by("code"));
  }

  Optional<PieceRow> findByCode(String code) {
    return find("lower(code) = lower(?1)", code).firstResultOptional();
  }

  /**
   * Those of these codes that are in use, in order, for nobody else to lock until the transaction
   * ends.
   */
  List<PieceRow> locked(Collection<String> codes) {
    return find("code in ?1 and withdrawnOn is null order by code", codes)
        .withLock(LockModeType.PESSIMISTIC_WRITE)
        .list();
  }

  PieceRow getByCode(String code) {
    return findByCode(code).orElseThrow(() -> new Refused(new Refusal.NotThere("piece", code)));
  }
}
