package vestiary.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.allocation.celebrant.Overload;
import vestiary.allocation.celebrant.Stay;
import vestiary.allocation.celebrant.WhyNot;
import vestiary.people.Person;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;

/** Finds who is named for more than he can serve. */
final class WhatPeopleServe {

  private final NamedPeople people;
  private final Map<MassId, DatedMass> masses;

  private WhatPeopleServe(SpanToCheck span) {
    this.people = new NamedPeople(span);
    this.masses =
        span.masses().stream().collect(Collectors.toMap(DatedMass::id, Function.identity()));
  }

  /** Of all Masses of a span, those around the dates that were asked for included. */
  static List<Clash> of(SpanToCheck span) {
    WhatPeopleServe all = new WhatPeopleServe(span);
    List<Clash> clashes = new ArrayList<>();
    all.people.overloads().forEach((person, overload) -> all.say(person, overload, clashes));
    return clashes;
  }

  private void say(Person person, Overload overload, List<Clash> clashes) {
    overload
        .both()
        .forEach(
            both ->
                clashes.add(
                    new InTwoPlaces(people, person, mass(both.first()), mass(both.second()), both)
                        .clash()));
    overload
        .tooMany()
        .forEach(
            many ->
                clashes.add(new OverTheLimit(people, person, masses(person, many), many).clash()));
  }

  /** The one too many is the last of its day. */
  private List<DatedMass> masses(Person person, WhyNot.TooMany many) {
    DatedMass one = mass(many.others().get(0));
    return people.ofOneDay(person, one, people.countBy());
  }

  private DatedMass mass(Stay stay) {
    return masses.get(stay.mass());
  }
}
