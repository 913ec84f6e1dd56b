package vestiary.people;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

@ApplicationScoped
class PersonRows implements PanacheRepositoryBase<PersonRow, UUID> {

  /** By surname; those who were removed for good are left out. */
  List<PersonRow> present() {
    return list("not erased order by shortName, name");
  }

  Optional<PersonRow> findBySlug(String slug) {
    return find("slug = ?1 and not erased", slug).firstResultOptional();
  }

  PersonRow getBySlug(String slug) {
    return findBySlug(slug).orElseThrow(() -> new Refused(new Refusal.NotThere("person", slug)));
  }

  /** That short name, or with a number after it where somebody has it already. */
  String free(String wanted) {
    return IntStream.iterate(1, number -> number + 1)
        .mapToObj(number -> number == 1 ? wanted : wanted + "-" + number)
        .filter(slug -> count("slug", slug) == 0)
        .findFirst()
        .orElseThrow();
  }

  /** By short name in addresses, by full name, or by surname if only one person has it. */
  Optional<PersonRow> findCalled(String name) {
    return findBySlug(name)
        .or(() -> find("lower(name) = lower(?1) and not erased", name).firstResultOptional())
        .or(
            () ->
                find("lower(concat(title, ' ', name)) = lower(?1) and not erased", name)
                    .firstResultOptional())
        .or(
            () ->
                count("lower(shortName) = lower(?1) and not erased", name) == 1
                    ? find("lower(shortName) = lower(?1) and not erased", name)
                        .firstResultOptional()
                    : Optional.empty())
        .or(() -> find("slug = ?1 and erased", name).firstResultOptional());
  }
}
