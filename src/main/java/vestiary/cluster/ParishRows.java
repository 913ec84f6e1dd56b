package vestiary.cluster;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;

@ApplicationScoped
class ParishRows implements PanacheRepositoryBase<ParishRow, UUID> {

  /** The parish of that name, made if there is none. */
  ParishRow named(String name) {
    return find("name", name)
        .firstResultOptional()
        .orElseGet(
            () -> {
              ParishRow row = new ParishRow();
              row.name = name;
              persist(row);
              return row;
            });
  }
}
