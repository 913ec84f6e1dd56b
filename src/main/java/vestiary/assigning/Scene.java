package vestiary.assigning;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.Journeys;
import vestiary.allocation.celebrant.Absence;
import vestiary.allocation.celebrant.Priest;
import vestiary.allocation.celebrant.PriestId;
import vestiary.allocation.celebrant.Stay;
import vestiary.calendar.Day;
import vestiary.cluster.Church;
import vestiary.cluster.Cluster;
import vestiary.people.Person;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;

/**
 * The Masses of some dates, and all that decides who can celebrate them, loaded once.
 *
 * @param first first date that was asked for
 * @param last last date, included
 * @param now before it nothing is divided any more
 * @param masses of these dates and of two days on either side, by start
 * @param days what the calendar of each church says of each of these dates and of one more
 * @param deacons of the cluster, among whom no Mass is divided
 * @param visiting priests from outside, who are not counted on, by surname
 * @param asked who was asked for where somebody else was named in his place, as long as that one is
 *     named
 */
record Scene(
    Cluster cluster,
    List<Church> churches,
    LocalDate first,
    LocalDate last,
    Instant now,
    List<DatedMass> masses,
    Map<Church, Map<LocalDate, Day>> days,
    List<Priest> priests,
    List<Priest> deacons,
    List<Priest> visiting,
    Map<UUID, Person> people,
    Map<MassId, PriestId> asked,
    Journeys journeys) {

  Scene {
    churches = List.copyOf(churches);
    masses = List.copyOf(masses);
    priests = List.copyOf(priests);
    deacons = List.copyOf(deacons);
    visiting = List.copyOf(visiting);
    people = Map.copyOf(people);
    asked = Map.copyOf(asked);
  }

  /** Whether it begins on one of the dates that were asked for. */
  boolean isWithin(DatedMass mass) {
    return !mass.date().isBefore(first) && !mass.date().isAfter(last);
  }

  /** Whether it is one of those, and not begun. */
  boolean isAhead(DatedMass mass) {
    return isWithin(mass) && !mass.start().toInstant().isBefore(now);
  }

  /** The Mass of that id; empty if it is none of these. */
  Optional<DatedMass> find(MassId id) {
    return masses.stream().filter(mass -> mass.id().equals(id)).findFirst();
  }

  Map<MassId, DatedMass> byId() {
    return masses.stream().collect(Collectors.toMap(DatedMass::id, Function.identity()));
  }

  Person person(PriestId priest) {
    return people.get(priest.value());
  }

  /** Priests from outside who did not say that they are away at that time, by surname. */
  List<Person> visitingAt(Stay stay) {
    return visiting.stream()
        .filter(priest -> !priest.isAway(stay.start(), stay.end()))
        .map(priest -> person(priest.id()))
        .toList();
  }

  /** Whoever of the priests is named for a Mass; empty if nobody of them is. */
  Optional<PriestId> findNamed(DatedMass mass) {
    return mass.findCelebrant().map(person -> new PriestId(person.id())).filter(this::isPriest);
  }

  /** Whether he is one of the priests among whom Masses are divided. */
  boolean isPriest(PriestId id) {
    return priests.stream().anyMatch(priest -> priest.id().equals(id));
  }

  /** Who celebrates what as things stand, of those Masses that one of the priests celebrates. */
  Map<MassId, PriestId> asNow() {
    Map<MassId, PriestId> now = new HashMap<>();
    masses.forEach(mass -> findNamed(mass).ifPresent(priest -> now.put(mass.id(), priest)));
    return now;
  }

  /** The same with a Mass as it is to be, in the place of the one of its id. */
  Scene with(DatedMass mass) {
    List<DatedMass> others =
        Stream.concat(masses.stream().filter(one -> !one.id().equals(mass.id())), Stream.of(mass))
            .sorted(Comparator.comparing(one -> one.start().toInstant()))
            .toList();
    return with(others, priests);
  }

  /** The same, as if one of the priests were away on all dates that were asked for. */
  Scene without(UUID person) {
    Absence absence =
        new Absence(
            first.atStartOfDay(cluster.zone()).toInstant(),
            last.plusDays(1).atStartOfDay(cluster.zone()).toInstant());
    List<Priest> others =
        priests.stream()
            .map(priest -> priest.id().value().equals(person) ? priest.away(absence) : priest)
            .toList();
    return with(masses, others);
  }

  /** The same, the deacons counted among the priests: for what is no Mass. */
  Scene withDeacons() {
    return with(masses, Stream.concat(deacons.stream(), priests.stream()).toList());
  }

  private Scene with(List<DatedMass> otherMasses, List<Priest> otherPriests) {
    return new Scene(
        cluster,
        churches,
        first,
        last,
        now,
        otherMasses,
        days,
        otherPriests,
        deacons,
        visiting,
        people,
        asked,
        journeys);
  }
}
