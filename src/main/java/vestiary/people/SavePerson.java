package vestiary.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import vestiary.problem.Asked;
import vestiary.problem.FieldFault;
import vestiary.problem.Refused;
import vestiary.problem.ShortName;

/** Enters people by name. */
@ApplicationScoped
@Transactional
public class SavePerson {

  private static final int LONGEST_NAME = 200;

  private final PersonRows people;
  private final FindPeople find;

  SavePerson(PersonRows people, FindPeople find) {
    this.people = people;
    this.find = find;
  }

  /** A person as typed; a short name not given is the last word of the name. */
  public record Request(
      String slug, String name, String shortName, String title, String role, Boolean visiting) {}

  /** What is wrong with a request, in the order of its fields; empty if it can be kept. */
  public List<FieldFault> findFaults(Request request) {
    Asked asked = new Asked();
    fill(new PersonRow(), request, asked);
    return asked.faults();
  }

  /**
   * Enters the person, or changes the one of that short name.
   *
   * @throws Refused if a field is unfit
   */
  public Person keep(Request request) {
    Asked asked = new Asked();
    PersonRow given = new PersonRow();
    fill(given, request, asked);
    asked.refuseIfFaulty();
    PersonRow row = people.findBySlug(given.slug).orElse(given);
    fill(row, request, asked);
    people.persist(row);
    return row.toPerson();
  }

  /** The one who is called so, or a visiting priest of that name, entered if there is nobody. */
  public Person called(String name) {
    return people
        .findCalled(name)
        .or(() -> people.findBySlug(slugOf(name)))
        .map(PersonRow::toPerson)
        .orElseGet(() -> keep(new Request(null, name, null, "", PersonRole.PRIEST.id(), true)));
  }

  /** The one who is called so, or a minister of that name, entered if there is nobody. */
  public Person carrying(String name) {
    return find.findCalled(name)
        .or(() -> people.findBySlug(slugOf(name)).map(PersonRow::toPerson))
        .orElseGet(() -> keep(new Request(null, name, null, "", PersonRole.MINISTER.id(), false)));
  }

  /** Those of these who were removed for good. */
  public List<UUID> nameless(Collection<UUID> ids) {
    return people.list("id in ?1 and erased", ids).stream().map(row -> row.id).toList();
  }

  private static void fill(PersonRow row, Request request, Asked asked) {
    row.name = asked.needed("name", request.name(), LONGEST_NAME);
    row.title = asked.text("title", request.title());
    row.role = asked.term("role", request.role(), PersonRole.PRIEST).id();
    row.visiting = Boolean.TRUE.equals(request.visiting());
    String shortName = asked.text("shortName", request.shortName());
    row.shortName = shortName.isEmpty() ? lastWord(row.name) : shortName;
    String slug = asked.text("slug", request.slug());
    row.slug = slug.isEmpty() ? slugOf(row.name) : slug;
    if (!ShortName.isWellFormed(row.slug)) {
      asked.fault(
          "slug",
          "slug \"%s\" must be of lower-case letters, digits and single hyphens."
              .formatted(row.slug));
    }
  }

  private static String lastWord(String name) {
    return name.substring(name.lastIndexOf(' ') + 1);
  }

  private static String slugOf(String name) {
    return ShortName.of(name, "person", LONGEST_NAME);
  }
}
