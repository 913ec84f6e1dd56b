package vestiary.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.problem.Asked;
import vestiary.problem.FieldFault;
import vestiary.problem.Refused;

/** Enters people by name. */
@ApplicationScoped
@Transactional
public class SavePerson {

  private final PersonRows people;
  private final PersonMailRows mails;
  private final FindPeople find;
  private final Children children;

  SavePerson(PersonRows people, PersonMailRows mails, FindPeople find, Children children) {
    this.people = people;
    this.mails = mails;
    this.find = find;
    this.children = children;
  }

  /**
   * A person as typed; a short name not given is the last word of the name.
   *
   * @param minor whether the person is under 18; {@code null}: as it is known
   * @param responsible names of parents or guardians of a child; {@code null}: as they are known
   */
  public record Request(
      String slug,
      String name,
      String shortName,
      String title,
      String role,
      Boolean visiting,
      Boolean minor,
      String responsible) {

    /** Of whom it is not said whether he is under 18. */
    public Request(
        String slug, String name, String shortName, String title, String role, Boolean visiting) {
      this(slug, name, shortName, title, role, visiting, null, null);
    }

    private Request of(String other) {
      return new Request(other, name, shortName, title, role, visiting, minor, responsible);
    }
  }

  /** What is wrong with a request, in the order of its fields; empty if it can be kept. */
  public List<FieldFault> findFaults(Request request) {
    Asked asked = new Asked();
    read(request, asked).noteTellingSlug(asked);
    return asked.faults();
  }

  /** What is wrong with a change of somebody; empty if it can be kept. */
  public List<FieldFault> findFaults(String slug, Request change) {
    Asked asked = new Asked();
    read(change.of(slug), asked);
    return asked.faults();
  }

  /**
   * Enters the person, or changes the one of that short name.
   *
   * @throws Refused if a field is unfit
   */
  public Person keep(Request request) {
    TypedPerson typed = readAllFit(request);
    return keep(people.findBySlug(typed.slug()).orElseGet(PersonRow::new), typed, typed.slug());
  }

  /**
   * Enters somebody new, even where another has the same name.
   *
   * @throws Refused if a field is unfit
   */
  public Person enter(Request request) {
    TypedPerson typed = readAllFit(request);
    return keep(new PersonRow(), typed, people.free(typed.slug()));
  }

  /**
   * Changes somebody; the short name in addresses stays, unless it told more of a child than it
   * may.
   *
   * @throws Refused if there is nobody of that short name, or a field is unfit
   */
  public Person change(String slug, Request request) {
    PersonRow row = people.getBySlug(slug);
    Asked asked = new Asked();
    TypedPerson typed = read(request.of(slug), asked);
    asked.refuseIfFaulty();
    boolean tells = typed.findChild().filter(child -> child.isToldBy(slug)).isPresent();
    return keep(row, typed, tells ? people.free(TypedPerson.slugOf(typed.shownName())) : slug);
  }

  /** The one who is called so, or a visiting priest of that name, entered if there is nobody. */
  public Person called(String name) {
    return findCalled(name)
        .orElseGet(() -> keep(new Request(null, name, null, "", PersonRole.PRIEST.id(), true)));
  }

  /** The one who is called so, or a minister of that name, entered if there is nobody. */
  public Person carrying(String name) {
    return findCalled(name)
        .orElseGet(() -> keep(new Request(null, name, null, "", PersonRole.MINISTER.id(), false)));
  }

  private Optional<Person> findCalled(String name) {
    return find.findCalled(name)
        .or(() -> people.findBySlug(TypedPerson.slugOf(name)).map(PersonRow::toPerson))
        .or(() -> children.findCalled(name).flatMap(find::find));
  }

  /** Those of these who were removed for good. */
  public List<UUID> nameless(Collection<UUID> ids) {
    return people.list("id in ?1 and erased", ids).stream().map(row -> row.id).toList();
  }

  private TypedPerson readAllFit(Request request) {
    Asked asked = new Asked();
    TypedPerson typed = read(request, asked);
    typed.noteTellingSlug(asked);
    asked.refuseIfFaulty();
    return typed;
  }

  private TypedPerson read(Request request, Asked asked) {
    Optional<PersonRow> known =
        request.slug() == null ? Optional.empty() : people.findBySlug(request.slug().strip());
    return TypedPerson.read(
        request, known.flatMap(row -> children.findKept(row.id)).stream().toList(), asked);
  }

  private Person keep(PersonRow row, TypedPerson typed, String slug) {
    row.slug = slug;
    row.name = typed.shownName();
    row.shortName = typed.shortName();
    row.title = typed.title();
    row.role = typed.role().id();
    row.visiting = typed.visiting();
    row.minor = typed.findChild().isPresent();
    people.persistAndFlush(row);
    typed
        .findChild()
        .ifPresentOrElse(
            child -> {
              mails.deleteById(row.id);
              children.keep(row.id, child, typed.responsible());
            },
            () -> children.forget(row.id));
    return row.toPerson();
  }
}
