package vestiary.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import vestiary.problem.Asked;
import vestiary.problem.Refused;

/** Enters and changes people with what they serve, all of it or nothing. */
@ApplicationScoped
@Transactional
class EnterPerson {

  private final FindPeople find;
  private final SavePerson people;
  private final SaveMinistry ministries;

  EnterPerson(FindPeople find, SavePerson people, SaveMinistry ministries) {
    this.find = find;
    this.people = people;
    this.ministries = ministries;
  }

  /**
   * Somebody new.
   *
   * @throws Refused if a field is unfit
   */
  Person enter(SavePerson.Request request, SaveMinistry.Request ministry) {
    Asked asked = new Asked();
    asked.add(people.findFaults(request));
    asked.add(ministries.findFaults(ministry));
    asked.refuseIfFaulty();
    Person entered = people.enter(request);
    ministries.keep(entered.slug(), ministry);
    return entered;
  }

  /**
   * Somebody who is known.
   *
   * @throws Refused if there is nobody of that short name, or a field is unfit
   */
  Person change(String slug, SavePerson.Request request, SaveMinistry.Request ministry) {
    find.get(slug);
    Asked asked = new Asked();
    asked.add(people.findFaults(slug, request));
    asked.add(ministries.findFaults(ministry));
    asked.refuseIfFaulty();
    Person changed = people.change(slug, request);
    ministries.keep(changed.slug(), ministry);
    return changed;
  }
}
