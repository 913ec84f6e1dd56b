package vestiary.pool;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.UUID;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

@ApplicationScoped
class SetRows implements PanacheRepositoryBase<SetRow, UUID> {

  Optional<SetRow> findByCode(String code) {
    return find("lower(code) = lower(?1)", code).firstResultOptional();
  }

  SetRow getByCode(String code) {
    return findByCode(code).orElseThrow(() -> new Refused(new Refusal.NotThere("set", code)));
  }

  /** The set of that code, made if there is none. */
  SetRow called(String code) {
    return findByCode(code)
        .orElseGet(
            () -> {
              SetRow row = new SetRow();
              row.code = code;
              persist(row);
              return row;
            });
  }
}
