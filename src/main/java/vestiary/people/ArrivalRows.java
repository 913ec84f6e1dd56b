package vestiary.people;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class ArrivalRows implements PanacheRepositoryBase<ArrivalRow, UUID> {

  Optional<ArrivalRow> find(UUID mass, UUID person) {
    return find("massId = ?1 and personId = ?2", mass, person).firstResultOptional();
  }
}
