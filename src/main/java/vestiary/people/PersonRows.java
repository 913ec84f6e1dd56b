package vestiary.people;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class PersonRows implements PanacheRepositoryBase<PersonRow, UUID> {

  Optional<PersonRow> findBySlug(String slug) {
    return find("slug", slug).firstResultOptional();
  }

  /** By short name in addresses, by full name, or by surname if only one person has it. */
  Optional<PersonRow> findCalled(String name) {
    return findBySlug(name)
        .or(() -> find("lower(name) = lower(?1)", name).firstResultOptional())
        .or(() -> find("lower(concat(title, ' ', name)) = lower(?1)", name).firstResultOptional())
        .or(
            () ->
                count("lower(shortName) = lower(?1)", name) == 1
                    ? find("lower(shortName) = lower(?1)", name).firstResultOptional()
                    : Optional.empty());
  }
}
