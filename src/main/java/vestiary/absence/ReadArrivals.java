package vestiary.absence;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.cluster.ReadCluster;
import vestiary.people.Arrival;
import vestiary.people.FindPeople;
import vestiary.people.KeepArrival;
import vestiary.people.Person;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;

/** To which Masses one person comes in the weeks ahead, and what is known of it. */
@ApplicationScoped
@Transactional
class ReadArrivals {

  private final FindPeople people;
  private final ReadMasses masses;
  private final KeepArrival arrivals;
  private final ReadCluster cluster;
  private final Clock clock;

  ReadArrivals(
      FindPeople people,
      ReadMasses masses,
      KeepArrival arrivals,
      ReadCluster cluster,
      Clock clock) {
    this.people = people;
    this.masses = masses;
    this.arrivals = arrivals;
    this.cluster = cluster;
    this.clock = clock;
  }

  /**
   * @param coming by the start of the Mass
   */
  record Arrivals(Person person, ZoneId zone, List<Coming> coming) {
    Arrivals {
      coming = List.copyOf(coming);
    }
  }

  /**
   * A Mass.
   *
   * @param said what was said of it; none where nothing was
   */
  record Coming(DatedMass mass, List<Arrival> said) {
    Coming {
      said = List.copyOf(said);
    }

    Arrival.Brings brings() {
      return said.stream().findFirst().map(Arrival::brings).orElse(Arrival.Brings.NOT_SAID);
    }

    /** In the zone of the Mass. */
    Optional<OffsetDateTime> findArrives() {
      return said.stream()
          .findFirst()
          .map(one -> one.arrives().atZone(mass.start().getZone()).toOffsetDateTime());
    }

    ArrivalBody toBody() {
      return new ArrivalBody(
          mass.id().value().toString(),
          mass.church().slug(),
          mass.start().toOffsetDateTime(),
          findArrives().orElse(null),
          brings().id());
    }
  }

  /**
   * Those at which he is named.
   *
   * @throws vestiary.problem.Refused if there is no such person
   */
  Arrivals of(String slug) {
    Person person = people.get(slug);
    ZoneId zone = cluster.cluster().zone();
    LocalDate today = LocalDate.now(clock.withZone(zone));
    LocalDate last = today.plusDays(WhatItTouches.DAYS_AHEAD);
    Map<UUID, List<Arrival>> known =
        arrivals
            .between(
                today.atStartOfDay(zone).toInstant(),
                last.plusDays(2).atStartOfDay(zone).toInstant())
            .stream()
            .filter(one -> one.person().equals(person.id()))
            .collect(Collectors.groupingBy(Arrival::mass));
    return new Arrivals(
        person,
        zone,
        masses.between(today, last).stream()
            .filter(mass -> mass.people().stream().anyMatch(p -> p.id().equals(person.id())))
            .map(mass -> new Coming(mass, known.getOrDefault(mass.id().value(), List.of())))
            .toList());
  }
}
