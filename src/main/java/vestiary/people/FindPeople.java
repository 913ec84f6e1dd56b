package vestiary.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;

/** Who is known in the cluster. */
@ApplicationScoped
@Transactional
public class FindPeople {

  private final PersonRows people;

  FindPeople(PersonRows people) {
    this.people = people;
  }

  /** Everybody, by surname; those who were removed for good are left out. */
  public List<Person> all() {
    return people.present().stream().map(PersonRow::toPerson).toList();
  }

  /** Whomever a row may still point at, those included who were removed for good. */
  public Map<UUID, Person> byId() {
    return people.streamAll().collect(Collectors.toMap(row -> row.id, PersonRow::toPerson));
  }

  /**
   * Whom an address names.
   *
   * @throws Refused if there is nobody of that short name
   */
  public Person get(String slug) {
    return people.getBySlug(slug).toPerson();
  }

  /** Whoever has that id; empty if nobody has. */
  public Optional<Person> find(UUID id) {
    return people.findByIdOptional(id).map(PersonRow::toPerson);
  }

  /** Whoever has that short name in addresses; empty if nobody has. */
  public Optional<Person> findBySlug(String slug) {
    return people.findBySlug(slug).map(PersonRow::toPerson);
  }

  /**
   * The one who is called so: by short name in addresses, full name with or without title, or
   * surname if only one person has it, the surname with or without a title.
   */
  public Optional<Person> findCalled(String name) {
    return people
        .findCalled(name)
        .or(() -> withoutTitle(name).flatMap(people::findCalled))
        .map(PersonRow::toPerson);
  }

  private Optional<String> withoutTitle(String name) {
    int blank = name.indexOf(' ');
    String first = name.substring(0, Math.max(0, blank));
    boolean isTitle =
        first.equals("Father")
            || !first.isEmpty() && people.count("lower(title) = lower(?1)", first) > 0;
    return isTitle ? Optional.of(name.substring(blank + 1).strip()) : Optional.empty();
  }
}
