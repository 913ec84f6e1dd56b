package vestiary.people;

import io.quarkus.panache.common.Sort;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;

/** Who is known in the cluster. */
@ApplicationScoped
public class FindPeople {

  private final PersonRows people;

  FindPeople(PersonRows people) {
    this.people = people;
  }

  /** Everybody, by surname. */
  public List<Person> all() {
    return people.listAll(Sort.by("shortName").and("name")).stream()
        .map(PersonRow::toPerson)
        .toList();
  }

  /**
   * The one who is called so: by short name in addresses, full name with or without title, or
   * surname if only one person has it.
   */
  public Optional<Person> findCalled(String name) {
    return people.findCalled(name).map(PersonRow::toPerson);
  }
}
