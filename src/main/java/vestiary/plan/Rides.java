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
import vestiary.people.Attendance;
import vestiary.people.Person;
import vestiary.schedule.DatedMass;
import vestiary.vesting.ChurchId;
import vestiary.vesting.VestingPolicies;
import vestiary.vesting.Window;

/**
 * The journeys that celebrants and deacons make anyway: who is named in one church and next in
 * another, on the same day or the day after, drives from the first to the second and can take
 * vestments along.
 *
 * <p>On one day he waits until what was worn is cleared, if he then still comes a quarter of an
 * hour before his next Mass; else he leaves ten minutes after the one that is over. Overnight he
 * comes in time to set out. All three: common practice, no source.
 */
final class Rides {

  private static final Duration BEFORE_MASS = Duration.ofMinutes(15);
  private static final Duration IN_HASTE = Duration.ofMinutes(10);

  private final List<DatedMass> masses;
  private final Journeys journeys;
  private final VestingPolicies policies;
  private final Attendance attendance;
  private final Map<String, Long> surnames;

  private Rides(
      List<DatedMass> masses, Journeys journeys, VestingPolicies policies, Attendance attendance) {
    this.masses = masses;
    this.attendance = attendance;
    this.journeys = journeys;
    this.policies = policies;
    this.surnames =
        people(masses).collect(Collectors.groupingBy(Person::shortName, Collectors.counting()));
  }

  /**
   * By who drives, then the hour; none of whoever would come after the next Mass has begun, or is
   * away from a Mass for which he is still named.
   *
   * @param attendance who is away over the same days
   */
  static List<Ride> of(
      List<DatedMass> masses, Journeys journeys, VestingPolicies policies, Attendance attendance) {
    return new Rides(masses, journeys, policies, attendance).find();
  }

  private List<Ride> find() {
    Map<Person, List<DatedMass>> byPerson = new TreeMap<>(Comparator.comparing(Person::slug));
    masses.stream()
        .sorted(Comparator.comparing(mass -> mass.start().toInstant()))
        .forEach(
            mass ->
                mass.people().stream()
                    .filter(person -> comes(person, mass))
                    .forEach(
                        person ->
                            byPerson
                                .computeIfAbsent(person, unknown -> new ArrayList<>())
                                .add(mass)));
    List<Ride> rides = new ArrayList<>();
    byPerson.forEach(
        (person, own) -> {
          for (int next = 1; next < own.size(); next++) {
            find(person, own.get(next - 1), own.get(next)).ifPresent(rides::add);
          }
        });
    return rides;
  }

  private boolean comes(Person person, DatedMass mass) {
    return attendance.find(person.id(), mass.start().toInstant(), mass.end().toInstant()).isEmpty();
  }

  private Optional<Ride> find(Person who, DatedMass first, DatedMass second) {
    ChurchId from = first.church().id();
    ChurchId to = second.church().id();
    if (from.equals(to) || first.date().plusDays(1).isBefore(second.date())) {
      return Optional.empty();
    }
    return journeys
        .find(from, to)
        .filter(time -> !time.isZero())
        .flatMap(
            time ->
                findDeparture(first, second, time)
                    .map(departs -> new Ride(called(who), from, to, departs, departs.plus(time))));
  }

  private Optional<Instant> findDeparture(DatedMass first, DatedMass second, Duration time) {
    Instant start = second.start().toInstant();
    Instant cleared = window(first).cleared();
    Instant early = earlier(window(second).setOut(), start.minus(BEFORE_MASS)).minus(time);
    if (!first.date().equals(second.date()) && !early.isBefore(cleared)) {
      return Optional.of(early);
    }
    if (!cleared.plus(time).plus(BEFORE_MASS).isAfter(start)) {
      return Optional.of(cleared);
    }
    return Optional.of(first.end().toInstant().plus(IN_HASTE))
        .filter(departs -> !departs.plus(time).isAfter(start));
  }

  private Window window(DatedMass mass) {
    return Window.of(mass.toVestedMass(), policies);
  }

  private static Instant earlier(Instant one, Instant other) {
    return one.isBefore(other) ? one : other;
  }

  private String called(Person person) {
    String name = surnames.get(person.shortName()) > 1 ? person.name() : person.shortName();
    return (spelled(person.title()) + " " + name).strip();
  }

  private static String spelled(String title) {
    return title.equals("Fr") ? "Father" : title;
  }

  private static Stream<Person> people(List<DatedMass> masses) {
    return masses.stream().flatMap(mass -> mass.people().stream()).distinct();
  }
}
