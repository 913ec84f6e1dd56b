package vestiary.serving;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.problem.Asked;
import vestiary.problem.FieldFault;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;
import vestiary.schedule.ServesAs;
import vestiary.schedule.TouchMass;

/**
 * Names who serves at a Mass and takes names off. A Mass that a pattern yielded is left alone by it
 * from then on; one that is moved or cancelled keeps its names, so that they are there if it is put
 * back.
 */
@ApplicationScoped
@Transactional
public class NameServing {

  private final ServingRows rows;
  private final ReadMasses masses;
  private final TouchMass touch;
  private final FindPeople people;
  private final CurrentVisitor visitor;
  private final AskedServing asks;

  NameServing(
      ServingRows rows,
      ReadMasses masses,
      TouchMass touch,
      FindPeople people,
      CurrentVisitor visitor,
      AskedServing asks) {
    this.asks = asks;
    this.rows = rows;
    this.masses = masses;
    this.touch = touch;
    this.people = people;
    this.visitor = visitor;
  }

  /**
   * One of those who are to serve.
   *
   * @param person short name in addresses, or the name that people use
   * @param role id of a {@link ServesAs}; blank for what that person usually is, which is refused
   *     of one who has no task at Mass
   */
  public record Wanted(String person, String role) {}

  /** Who was taken off, and what he was named as. */
  record Off(Person person, ServesAs as) {}

  /**
   * Names one more, or another role for one who is named.
   *
   * @throws Refused if there is no such Mass or person, it is cancelled, the role is not known, he
   *     is ordained, or the church is none of one’s own
   */
  public Person add(String massId, Wanted wanted) {
    DatedMass mass = mine(massId);
    Asked asked = new Asked();
    Map<Person, ServesAs> read = asks.read(List.of(wanted), asked);
    asked.refuseIfFaulty();
    touch.touch(mass.id());
    read.forEach((person, as) -> keep(mass.id().value(), person, as));
    rows.flush();
    return read.keySet().iterator().next();
  }

  /**
   * Takes one off.
   *
   * @param slug of the person
   * @throws Refused if he is not named there, or as {@link #add}
   */
  Off takeOff(String massId, String slug) {
    DatedMass mass = mine(massId);
    Person person = people.get(slug);
    touch.touch(mass.id());
    ServingRow row =
        rows.find(mass.id().value(), person.id())
            .orElseThrow(() -> new Refused(new Refusal.NotThere("person", slug)));
    Off off = new Off(person, row.as());
    rows.delete(row);
    rows.flush();
    return off;
  }

  /**
   * These and no others serve; as {@link #add} otherwise.
   *
   * @param wanted {@code null} if nothing was said, which is refused
   */
  public void set(String massId, List<Wanted> wanted) {
    DatedMass mass = mine(massId);
    Asked asked = new Asked();
    Map<Person, ServesAs> read = asks.read(wanted, asked);
    asked.refuseIfFaulty();
    touch.touch(mass.id());
    keepOnly(mass.id().value(), read);
  }

  /** What is wrong with such names; empty if they can be kept. Nothing is changed. */
  public List<FieldFault> findFaults(List<Wanted> wanted) {
    Asked asked = new Asked();
    asks.read(wanted, asked);
    return asked.faults();
  }

  /**
   * The same as {@link #set} for a list that is brought in: its Masses are left alone by patterns
   * already.
   *
   * @param wanted without faults
   */
  public void bringIn(UUID mass, List<Wanted> wanted) {
    Asked asked = new Asked();
    Map<Person, ServesAs> read = asks.read(wanted, asked);
    asked.refuseIfFaulty();
    keepOnly(mass, read);
  }

  private void keepOnly(UUID mass, Map<Person, ServesAs> read) {
    Set<UUID> stay = read.keySet().stream().map(Person::id).collect(Collectors.toSet());
    rows.list("massId", mass).stream()
        .filter(row -> !stay.contains(row.personId))
        .forEach(rows::delete);
    read.forEach((person, as) -> keep(mass, person, as));
    rows.flush();
  }

  private void keep(UUID mass, Person person, ServesAs as) {
    Optional<ServingRow> before = rows.find(mass, person.id());
    if (before.filter(row -> row.as() == as).isPresent()) {
      return;
    }
    // The history of the Mass and of the person tells by whom and where only what is entered anew.
    before.ifPresent(rows::delete);
    rows.flush();
    ServingRow row = new ServingRow();
    row.massId = mass;
    row.personId = person.id();
    row.role = as.id();
    rows.persist(row);
  }

  private DatedMass mine(String massId) {
    DatedMass mass = masses.get(massId);
    visitor.refuseOutsideOwn(Action.ENTER_MASSES, mass.church().id().value());
    return mass;
  }
}
