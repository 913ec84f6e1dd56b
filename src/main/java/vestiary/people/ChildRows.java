package vestiary.people;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class ChildRows implements PanacheRepositoryBase<ChildRow, UUID> {

  /** By the whole name, letter case aside, if only one has it. */
  Optional<ChildRow> findCalled(String name) {
    return count("lower(wholeName) = lower(?1)", name) == 1
        ? find("lower(wholeName) = lower(?1)", name).firstResultOptional()
        : Optional.empty();
  }
}
