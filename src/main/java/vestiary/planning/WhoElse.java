package vestiary.planning;

import static vestiary.web.Speech.say;

import java.util.List;
import java.util.Optional;
import vestiary.people.Person;
import vestiary.schedule.DatedMass;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Who could celebrate in somebody's place, and the way to all that is said of it. */
final class WhoElse {

  private static final int MOST_NAMES = 3;

  private final NamedPeople people;

  WhoElse(NamedPeople people) {
    this.people = people;
  }

  /**
   * For example "Father Fintan Oakhallow could take the one at 11:00 at Saint Joseph."; empty if he
   * does not celebrate it himself, or nobody could.
   */
  Optional<String> sentence(DatedMass mass, Person person) {
    List<String> names =
        celebrates(mass, person)
            ? people.others(mass).stream().limit(MOST_NAMES).map(Person::calledName).toList()
            : List.of();
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of(say("%s could take the one %s.", Speech.choice(names), which(mass)));
  }

  /** To the pages that advise on those Masses that he celebrates. */
  static List<Link> ways(List<DatedMass> masses, Person person) {
    return masses.stream()
        .filter(mass -> celebrates(mass, person))
        .map(
            mass ->
                new Link(
                    say("Who can celebrate ") + which(mass),
                    "/masses/%s/celebrant".formatted(mass.id().value())))
        .toList();
  }

  /** To the page that names who serves at a Mass. */
  static Link serving(DatedMass mass) {
    return new Link(
        say("Who serves ") + which(mass), "/masses/%s/serving".formatted(mass.id().value()));
  }

  /** For example "at 11:00 at Saint Joseph". */
  static String which(DatedMass mass) {
    return say("at %s at %s", Speech.clock(mass.start()), mass.church().name());
  }

  private static boolean celebrates(DatedMass mass, Person person) {
    return mass.kind().isMass() && !mass.ministers().bishop() && mass.celebrants().contains(person);
  }
}
