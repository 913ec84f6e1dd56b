package vestiary.onemore;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.vesting.MassId;

@ApplicationScoped
class OneMoreRows implements PanacheRepositoryBase<OneMoreRow, UUID> {

  /** Those who came to a Mass, the latest first. */
  List<OneMoreRow> of(MassId mass) {
    return list("massId = ?1 order by takenAt desc, id desc", mass.value());
  }

  Optional<OneMoreRow> find(MassId mass, UUID id) {
    return find("massId = ?1 and id = ?2", mass.value(), id).firstResultOptional();
  }
}
