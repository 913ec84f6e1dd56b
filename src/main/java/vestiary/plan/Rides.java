package vestiary.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.Journeys;
import vestiary.allocation.plan.Ride;
import vestiary.people.Person;
import vestiary.schedule.DatedMass;

/**
 * The journeys that celebrants make anyway: who celebrates in two churches on one day, one after
 * the other, drives from the first to the second and can take vestments along. He leaves ten
 * minutes after Mass: common practice, no source.
 */
final class Rides {

  private static final Duration AFTER_MASS = Duration.ofMinutes(10);

  private final List<DatedMass> masses;
  private final Journeys journeys;
  private final Map<String, Long> surnames;

  private Rides(List<DatedMass> masses, Journeys journeys) {
    this.masses = masses;
    this.journeys = journeys;
    this.surnames =
        people(masses).collect(Collectors.groupingBy(Person::shortName, Collectors.counting()));
  }

  /** By who drives, then the hour; none of whoever would come after the next Mass has begun. */
  static List<Ride> of(List<DatedMass> masses, Journeys journeys) {
    return new Rides(masses, journeys).find();
  }

  private List<Ride> find() {
    Map<String, List<DatedMass>> byCelebrant = new TreeMap<>();
    masses.stream()
        .sorted(Comparator.comparing(mass -> mass.start().toInstant()))
        .forEach(
            mass ->
                mass.findCelebrant()
                    .ifPresent(
                        person ->
                            byCelebrant
                                .computeIfAbsent(person.slug(), unknown -> new ArrayList<>())
                                .add(mass)));
    List<Ride> rides = new ArrayList<>();
    for (List<DatedMass> own : byCelebrant.values()) {
      for (int next = 1; next < own.size(); next++) {
        find(own.get(next - 1), own.get(next)).ifPresent(rides::add);
      }
    }
    return rides;
  }

  private Optional<Ride> find(DatedMass first, DatedMass second) {
    if (first.church().id().equals(second.church().id()) || !first.date().equals(second.date())) {
      return Optional.empty();
    }
    Instant departs = first.end().toInstant().plus(AFTER_MASS);
    return journeys
        .find(first.church().id(), second.church().id())
        .filter(time -> !time.isZero())
        .map(departs::plus)
        .filter(arrives -> !arrives.isAfter(second.start().toInstant()))
        .map(
            arrives ->
                new Ride(
                    called(first.findCelebrant().orElseThrow()),
                    first.church().id(),
                    second.church().id(),
                    departs,
                    arrives));
  }

  private String called(Person person) {
    String name = surnames.get(person.shortName()) > 1 ? person.name() : person.shortName();
    return (spelled(person.title()) + " " + name).strip();
  }

  private static String spelled(String title) {
    return title.equals("Fr") ? "Father" : title;
  }

  private static Stream<Person> people(List<DatedMass> masses) {
    return masses.stream().flatMap(mass -> mass.findCelebrant().stream()).distinct();
  }
}
