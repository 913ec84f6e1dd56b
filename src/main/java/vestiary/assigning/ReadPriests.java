package vestiary.assigning;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import vestiary.allocation.celebrant.Priest;
import vestiary.cluster.Cluster;
import vestiary.people.Absence;
import vestiary.people.FindPeople;
import vestiary.people.Ministry;
import vestiary.people.Person;
import vestiary.people.PersonRole;
import vestiary.people.ReadAbsences;
import vestiary.people.ReadMinistries;
import vestiary.planning.Serving;
import vestiary.schedule.DatedMass;
import vestiary.vesting.ChurchId;

/**
 * The priests of the cluster, with what decides which Masses they can take. Whoever comes from
 * outside is not counted on: he is named by hand.
 */
@ApplicationScoped
class ReadPriests {

  private final FindPeople people;
  private final ReadMinistries ministries;
  private final ReadAbsences absences;

  ReadPriests(FindPeople people, ReadMinistries ministries, ReadAbsences absences) {
    this.people = people;
    this.ministries = ministries;
    this.absences = absences;
  }

  /**
   * All of one role.
   *
   * @param role priests, or deacons, who lead what is no Mass
   * @param masses from which it is told where each sets out from, unless he serves one church: the
   *     one in which he celebrates most often
   * @param until not included
   */
  @Transactional
  List<Priest> all(
      PersonRole role, Cluster here, List<DatedMass> masses, Instant from, Instant until) {
    return all(person -> person.role() == role && !person.isVisiting(), here, masses, from, until);
  }

  private List<Priest> all(
      Predicate<Person> which, Cluster here, List<DatedMass> masses, Instant from, Instant until) {
    Map<UUID, Ministry> serving = ministries.all();
    List<Absence> away = absences.between(from, until);
    return people.all().stream()
        .filter(which)
        .map(
            person ->
                priest(
                    person, serving.getOrDefault(person.id(), Ministry.UNSAID), here, away, masses))
        .toList();
  }

  /**
   * Priests from outside, by surname.
   *
   * @param until not included
   */
  @Transactional
  List<Priest> visiting(Cluster here, Instant from, Instant until) {
    return all(
        person -> person.role() == PersonRole.PRIEST && person.isVisiting(),
        here,
        List.of(),
        from,
        until);
  }

  private static Priest priest(
      Person person, Ministry ministry, Cluster here, List<Absence> away, List<DatedMass> masses) {
    return Serving.priest(
        person,
        ministry.orIn(here.language().toLanguageTag()),
        here.policies(),
        away,
        ministry.churches().size() == 1 ? List.copyOf(ministry.churches()) : home(person, masses));
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
