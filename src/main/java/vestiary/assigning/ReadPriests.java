package vestiary.assigning;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.allocation.celebrant.Permitted;
import vestiary.allocation.celebrant.Priest;
import vestiary.allocation.celebrant.PriestId;
import vestiary.cluster.Policies;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.people.PersonRole;
import vestiary.schedule.DatedMass;
import vestiary.vesting.ChurchId;

/**
 * The priests of the cluster, with what decides which Masses they can take. Whoever comes from
 * outside is not counted on: he is named by hand.
 */
@ApplicationScoped
class ReadPriests {

  private final FindPeople people;

  ReadPriests(FindPeople people) {
    this.people = people;
  }

  /**
   * All of them.
   *
   * @param masses from which it is told where each sets out from: the church in which he celebrates
   *     most often
   */
  @Transactional
  List<Priest> all(Policies policies, List<DatedMass> masses) {
    return people.all().stream()
        .filter(person -> person.role() == PersonRole.PRIEST && !person.isVisiting())
        .map(person -> priest(person, policies, masses))
        .toList();
  }

  /** Priests from outside, by surname. */
  @Transactional
  List<Person> visiting() {
    return people.all().stream()
        .filter(person -> person.role() == PersonRole.PRIEST && person.isVisiting())
        .toList();
  }

  private static Priest priest(Person person, Policies policies, List<DatedMass> masses) {
    return new Priest(
        new PriestId(person.id()),
        Priest.NO_BOUND_OF_HIS_OWN,
        new Permitted(policies.permittedWeekday(), policies.permittedSunday()),
        Set.of(),
        Set.of(),
        List.of(),
        Set.of(),
        home(person, masses));
  }

  private static List<ChurchId> home(Person person, List<DatedMass> masses) {
    Map<ChurchId, Long> often =
        masses.stream()
            .filter(mass -> mass.celebrants().contains(person))
            .map(mass -> mass.church().id())
            .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
    return often.entrySet().stream()
        .max(
            Comparator.comparing((Map.Entry<ChurchId, Long> one) -> one.getValue())
                .thenComparing(Map.Entry::getKey))
        .map(Map.Entry::getKey)
        .stream()
        .toList();
  }
}
