package vestiary.schedule;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.web.Link;

/**
 * Whom the form of a Mass entered by the way: a name that nobody has becomes a priest from outside,
 * and a slip of the pen would do so unnoticed.
 */
@ApplicationScoped
class Newcomers {

  private final FindPeople people;

  Newcomers(FindPeople people) {
    this.people = people;
  }

  /** Ids of everybody, to be asked before the form is kept. */
  Set<UUID> known() {
    return people.all().stream().map(Person::id).collect(Collectors.toSet());
  }

  /** Short names of those who are named at the Mass and were not known before. */
  List<String> since(Set<UUID> known, DatedMass mass) {
    return named(mass)
        .filter(person -> !known.contains(person.id()))
        .map(Person::slug)
        .distinct()
        .toList();
  }

  /** Says so of those of these short names who are named at the Mass. */
  List<MassForm.Entered> told(DatedMass mass, Collection<String> slugs) {
    return named(mass)
        .filter(person -> person.isVisiting() && slugs.contains(person.slug()))
        .distinct()
        .map(
            person ->
                new MassForm.Entered(
                    say(
                        "%s was not known, and is now entered as a priest from outside. If that was a slip, write the right name here, and remove the other:",
                        person.name()),
                    new Link(person.name(), "/people/" + person.slug())))
        .toList();
  }

  private static Stream<Person> named(DatedMass mass) {
    return Stream.concat(mass.findCelebrant().stream(), mass.named().stream());
  }
}
