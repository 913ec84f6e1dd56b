package vestiary.people;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import vestiary.problem.Asked;
import vestiary.problem.Refused;

/** Keeps how people are written to, apart from their names; no page and no list shows it. */
@ApplicationScoped
public class KeepMail {

  /** RFC 5321, 4.5.3.1.3: a path of 256 octets with its brackets. */
  private static final int LONGEST = 254;

  private static final Pattern ADDRESS = Pattern.compile("[^\\s@<>,;:\"]+@[^\\s@<>,;:\"]+");

  private final PersonMailRows mails;
  private final PersonRows people;
  private final Children children;
  private final Clock clock;

  KeepMail(PersonMailRows mails, PersonRows people, Children children, Clock clock) {
    this.children = children;
    this.clock = clock;
    this.mails = mails;
    this.people = people;
  }

  /** An address as it was typed; empty if not given. */
  public String address(String field, String value, Asked asked) {
    String address = asked.text(field, value, LONGEST);
    if (!address.isEmpty() && !ADDRESS.matcher(address).matches()) {
      asked.fault(
          field,
          say("%s \"%s\" is no mail address; write it as name@example.org.", field, address));
    }
    return address;
  }

  /**
   * Keeps the address of a person instead of what was kept.
   *
   * @throws Refused if the person is a child
   */
  @Transactional
  public void keep(UUID person, String address) {
    children.refuseContact(person, "mail");
    PersonMailRow row = mails.findByIdOptional(person).orElseGet(PersonMailRow::new);
    row.id = person;
    row.address = address;
    row.keptAt = clock.instant();
    mails.persist(row);
  }

  /**
   * The same by short name.
   *
   * @throws Refused if there is nobody of that short name, the person is a child, or the address is
   *     none
   */
  @Transactional
  public void keep(String slug, String value) {
    UUID person = people.getBySlug(slug).id;
    children.refuseContact(person, "address");
    Asked asked = new Asked();
    String address = address("address", asked.needed("address", value, LONGEST), asked);
    asked.refuseIfFaulty();
    keep(person, address);
  }

  /** Forgets the address; once it is forgotten, doing it again changes nothing. */
  @Transactional
  public void forget(String slug) {
    mails.deleteById(people.getBySlug(slug).id);
  }

  /** Empty if none is kept. */
  @Transactional
  public Optional<String> find(UUID person) {
    return mails.findByIdOptional(person).map(row -> row.address);
  }
}
