package vestiary.pool;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;

@ApplicationScoped
class SuitRows implements PanacheRepositoryBase<SuitRow, UUID> {

  /** The suit of that name, made if there is none. */
  SuitRow called(String name) {
    return find("name", name)
        .firstResultOptional()
        .orElseGet(
            () -> {
              SuitRow row = new SuitRow();
              row.name = name;
              persist(row);
              return row;
            });
  }
}
