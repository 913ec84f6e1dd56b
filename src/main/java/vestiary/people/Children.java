package vestiary.people;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.access.Visitor;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.vesting.ChurchId;

/**
 * People under 18. Everybody reads the first name and an initial, since no more stands in the list
 * of people; whoever is responsible reads the whole name here.
 */
@ApplicationScoped
@Transactional
public class Children {

  private final ChildRows children;
  private final PersonChurchRows churches;
  private final CurrentVisitor current;

  Children(ChildRows children, PersonChurchRows churches, CurrentVisitor current) {
    this.children = children;
    this.churches = churches;
    this.current = current;
  }

  /**
   * What those responsible read.
   *
   * @param responsible names of parents or guardians
   */
  public record Child(String wholeName, String responsible) {}

  /** Ids of all who are under 18. */
  public Set<UUID> all() {
    return children.streamAll().map(row -> row.id).collect(Collectors.toSet());
  }

  public boolean isChild(UUID person) {
    return children.findByIdOptional(person).isPresent();
  }

  /** Empty if the person is no child, or whoever asks is not responsible. */
  public Optional<Child> find(UUID person) {
    return findKept(person).filter(child -> maySee(person));
  }

  /** The names by which a child is known in texts, to be taken out of them. */
  public List<String> names(UUID person) {
    return children.findByIdOptional(person).stream().map(row -> row.wholeName).toList();
  }

  /** Whoever has that whole name, so that nobody is entered by it a second time. */
  Optional<UUID> findCalled(String name) {
    return children.findCalled(name).map(row -> row.id);
  }

  /** All that is kept, whoever asks; empty if the person is no child. */
  Optional<Child> findKept(UUID person) {
    return children.findByIdOptional(person).map(row -> new Child(row.wholeName, row.responsible));
  }

  /** Keeps what those responsible read. */
  void keep(UUID person, ChildName name, String responsible) {
    ChildRow row = children.findByIdOptional(person).orElseGet(ChildRow::new);
    row.id = person;
    row.wholeName = name.whole();
    row.responsible = responsible;
    children.persist(row);
  }

  /** The person has grown up, or is forgotten. */
  void forget(UUID person) {
    children.deleteById(person);
  }

  /**
   * A child is reached through those responsible, by ways that are kept elsewhere.
   *
   * @throws Refused if that person is a child
   */
  void refuseContact(UUID person, String field) {
    if (isChild(person)) {
      throw new Refused(
          new Refusal.AgainstRule(
              field,
              say(
                  "No address of anybody under 18 is kept here. Write to the parents or whoever is responsible, by a list that is kept as your diocese asks.")));
    }
  }

  /** Everywhere, or in a church of one’s own where the child serves. */
  private boolean maySee(UUID person) {
    Visitor visitor = current.visitor();
    return visitor.may(Action.SEE_CHILDREN)
        && (visitor.may(Action.KEEP_PEOPLE)
            || churches.of(person).stream()
                .map(ChurchId::value)
                .anyMatch(church -> visitor.mayIn(Action.SEE_CHILDREN, church)));
  }
}
