package vestiary.asking;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import vestiary.people.FindPeople;
import vestiary.people.KeepMail;
import vestiary.people.Person;
import vestiary.people.SavePerson;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Gives a trip to a person by name, who then says yes or no. */
@ApplicationScoped
public class AskCarrier {

  private static final int LONGEST_NAME = 200;

  private final AskingRows askings;
  private final FindPeople find;
  private final SavePerson people;
  private final KeepMail mail;
  private final Clock clock;

  AskCarrier(AskingRows askings, FindPeople find, SavePerson people, KeepMail mail, Clock clock) {
    this.askings = askings;
    this.find = find;
    this.people = people;
    this.mail = mail;
    this.clock = clock;
  }

  /**
   * What was typed.
   *
   * @param carrier who is asked: anybody of the cluster by any name he is called; somebody new is
   *     entered by name
   * @param by who asks; may be left out
   * @param mail his address, kept for next time; may be left out
   */
  public record Request(String carrier, String by, String mail) {}

  /**
   * Asks.
   *
   * @throws Refused if a field is unfit, somebody has it already, or this person said no to it
   */
  @Transactional
  public void ask(AskedTrip trip, Request request) {
    Asked asked = new Asked();
    String name = asked.needed("carrier", request.carrier(), LONGEST_NAME);
    String by = asked.text("by", request.by(), LONGEST_NAME);
    String address = mail.address("mail", request.mail(), asked);
    asked.refuseIfFaulty();
    List<AskingRow> before = askings.ofTrip(trip.id());
    before.stream().filter(row -> row.state().isOpen()).findFirst().ifPresent(this::refuse);
    Person person = people.carrying(name);
    refuseIfDeclined(before, person);
    if (!address.isEmpty()) {
      mail.keep(person.id(), address);
    }
    askings.persistAndFlush(row(trip, person, by));
  }

  private void refuse(AskingRow row) {
    throw new Refused(
        new Refusal.Taken(
            "carrier",
            say(
                "%s %s. Take that back first, or wait for the answer.",
                name(row),
                row.state() == AskingState.ASKED
                    ? say("was asked already")
                    : say("takes this already"))));
  }

  private String name(AskingRow row) {
    return find.all().stream()
        .filter(person -> person.id().equals(row.personId))
        .findFirst()
        .map(Person::calledName)
        .orElse(say("Somebody"));
  }

  private static void refuseIfDeclined(List<AskingRow> before, Person person) {
    boolean declined =
        before.stream()
            .anyMatch(
                row -> row.state() == AskingState.DECLINED && person.id().equals(row.personId));
    if (declined) {
      throw new Refused(
          new Refusal.Taken(
              "carrier",
              say(
                  "%s has said no to this journey. Ask somebody else, or plan anew.",
                  person.inWords())));
    }
  }

  private AskingRow row(AskedTrip trip, Person person, String by) {
    AskingRow row = new AskingRow();
    row.tripId = trip.id();
    row.fromId = trip.from().value();
    row.toId = trip.to().value();
    row.leaveBy = trip.leaveBy();
    row.rider = trip.rider();
    row.riding = isRider(trip, person);
    row.pieces = trip.pieces().toArray(String[]::new);
    row.personId = person.id();
    row.askedBy = by;
    row.askedAt = clock.instant();
    row.changedBy = by;
    row.changedAt = row.askedAt;
    return row;
  }

  private boolean isRider(AskedTrip trip, Person person) {
    Optional<Person> rider =
        trip.rider().isEmpty() ? Optional.empty() : find.findCalled(trip.rider());
    return rider.filter(one -> one.id().equals(person.id())).isPresent();
  }
}
