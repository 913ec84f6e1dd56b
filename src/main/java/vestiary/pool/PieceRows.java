package vestiary.pool;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import io.quarkus.panache.common.Sort;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

@ApplicationScoped
class PieceRows implements PanacheRepositoryBase<PieceRow, UUID> {

  List<PieceRow> byCode() {
    return listAll(Sort.by("code"));
  }

  Optional<PieceRow> findByCode(String code) {
    return find("lower(code) = lower(?1)", code).firstResultOptional();
  }

  PieceRow getByCode(String code) {
    return findByCode(code).orElseThrow(() -> new Refused(new Refusal.NotThere("piece", code)));
  }
}
