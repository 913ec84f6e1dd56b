package vestiary.absence;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalTime;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.people.Arrival;
import vestiary.people.FindPeople;
import vestiary.people.KeepArrival;
import vestiary.people.Person;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;
import vestiary.web.Speech;

/** Keeps when one who is named at a Mass arrives there, by the clock on its day. */
@ApplicationScoped
class SayArrival {

  private final KeepArrival arrivals;
  private final FindPeople people;
  private final ReadMasses masses;
  private final CurrentVisitor visitor;

  SayArrival(KeepArrival arrivals, FindPeople people, ReadMasses masses, CurrentVisitor visitor) {
    this.arrivals = arrivals;
    this.people = people;
    this.masses = masses;
    this.visitor = visitor;
  }

  /**
   * Keeps it; without an hour it is forgotten.
   *
   * @param slug of whoever comes
   * @param time as in 18:10, on the day of the Mass
   * @param brings not-said, own or nothing
   * @throws Refused if there is no such person or Mass, the person is not named there, a field is
   *     unfit, or the church is none of one’s own
   */
  @Transactional
  void say(String slug, String massId, String time, String brings) {
    Person person = people.get(slug);
    DatedMass mass = masses.get(massId);
    visitor.refuseOutsideOwn(Action.ENTER_MASSES, mass.church().id().value());
    if (mass.people().stream().noneMatch(named -> named.id().equals(person.id()))) {
      throw new Refused(
          new Refusal.AgainstRule(
              "mass", Speech.say("%s is not named at that Mass.", person.inWords())));
    }
    Asked asked = new Asked();
    boolean isForgotten = asked.text("arrives", time).isEmpty();
    LocalTime hour = isForgotten ? LocalTime.MIDNIGHT : asked.time("arrives", time);
    Arrival.Brings said = asked.term("brings", brings, Arrival.Brings.NOT_SAID);
    asked.refuseIfFaulty();
    if (isForgotten) {
      arrivals.forget(mass.id().value(), person.id());
    } else {
      arrivals.keep(
          new Arrival(mass.id().value(), person.id(), mass.start().with(hour).toInstant(), said));
    }
  }
}
