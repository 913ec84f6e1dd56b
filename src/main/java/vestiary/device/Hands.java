package vestiary.device;

import static vestiary.web.Speech.say;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.people.SavePerson;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.users.Passwords;

/** Who acts on the shared devices of a church, by name or by a short code. */
@ApplicationScoped
public class Hands {

  /**
   * Of four digits there are ten thousand; five tries find one of ten people’s in 200 days of it.
   */
  static final int MOST_WRONG_CODES = 5;

  private static final int LONGEST_NAME = 200;
  private static final String CODE = "\\d{4,8}";

  private final HandRows hands;
  private final SharedDeviceRows devices;
  private final FindPeople find;
  private final SavePerson people;
  private final Passwords passwords;
  private final CurrentVisitor visitor;

  Hands(
      HandRows hands,
      SharedDeviceRows devices,
      FindPeople find,
      SavePerson people,
      Passwords passwords,
      CurrentVisitor visitor) {
    this.hands = hands;
    this.devices = devices;
    this.find = find;
    this.people = people;
    this.passwords = passwords;
    this.visitor = visitor;
  }

  /**
   * Somebody who acts on them.
   *
   * @param hasCode whether the code is asked, and the name not enough
   */
  record Hand(UUID id, UUID person, String name, boolean hasCode) {}

  /** By name. */
  @Transactional
  List<Hand> of(UUID church) {
    Map<UUID, Person> known = find.byId();
    return hands.of(church).stream()
        .map(
            row ->
                new Hand(
                    row.id,
                    row.personId,
                    known.get(row.personId).calledName(),
                    !row.fingerprint.isEmpty()))
        .sorted(Comparator.comparing(Hand::name))
        .toList();
  }

  /**
   * Lets somebody act on them, or changes the code.
   *
   * @param code four to eight digits; empty if the name alone is to be asked
   * @throws Refused if the name is missing, or the code is none or somebody else’s
   */
  void add(UUID church, String name, String code) {
    visitor.refuseOutsideOwn(Action.LET_DEVICES, church);
    Asked asked = new Asked();
    String called = asked.needed("name", name, LONGEST_NAME);
    String digits = code.strip();
    if (!digits.isEmpty() && !digits.matches(CODE)) {
      asked.fault("code", say("A code has four to eight digits."));
    }
    asked.refuseIfFaulty();
    List<UUID> holders = findByCode(church, digits).stream().toList();
    String fingerprint = digits.isEmpty() ? "" : passwords.hash(digits);
    QuarkusTransaction.requiringNew()
        .run(() -> keep(church, people.carrying(called).id(), holders, fingerprint));
  }

  private void keep(UUID church, UUID person, List<UUID> holders, String fingerprint) {
    if (holders.stream().anyMatch(other -> !other.equals(person))) {
      throw new Refused(
          Refusal.Unfit.of("code", say("This code cannot be taken; choose another.")));
    }
    HandRow row =
        hands
            .find("churchId = ?1 and personId = ?2", church, person)
            .firstResultOptional()
            .orElseGet(HandRow::new);
    row.churchId = church;
    row.personId = person;
    row.fingerprint = fingerprint;
    hands.persist(row);
  }

  /** Lets somebody act on them no more; nothing if nobody of that id does. */
  @Transactional
  void remove(UUID church, String id) {
    visitor.refuseOutsideOwn(Action.LET_DEVICES, church);
    hands.delete("id = ?1 and churchId = ?2", Asked.id("person", id), church);
  }

  /** Takes somebody who is removed for good from every church. */
  @Transactional
  public void forget(UUID person) {
    hands.delete("personId", person);
  }

  /** The one who is said to be holding a device, if the name alone is asked. */
  @Transactional
  Optional<UUID> byName(UUID church, String person) {
    return hands.of(church).stream()
        .filter(row -> row.fingerprint.isEmpty() && row.personId.toString().equals(person))
        .map(row -> row.personId)
        .findFirst();
  }

  /**
   * Whose code it is. A wrong one is counted, whatever becomes of the request; after five the
   * device asks for an administrator.
   */
  Optional<UUID> byCode(UUID device, UUID church, String code) {
    Optional<UUID> person = findByCode(church, code.strip());
    QuarkusTransaction.requiringNew()
        .run(
            () -> {
              SharedDeviceRow row = devices.findById(device);
              row.wrongCodes = person.isPresent() ? 0 : row.wrongCodes + 1;
            });
    return person;
  }

  /** No transaction is held open while codes are hashed. */
  private Optional<UUID> findByCode(UUID church, String code) {
    if (code.isEmpty()) {
      return Optional.empty();
    }
    List<HandRow> all = QuarkusTransaction.requiringNew().call(() -> hands.of(church));
    return all.stream()
        .filter(row -> !row.fingerprint.isEmpty() && passwords.matches(code, row.fingerprint))
        .map(row -> row.personId)
        .findFirst();
  }
}
