package vestiary.assigning;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.allocation.Journey;
import vestiary.allocation.Journeys;
import vestiary.calendar.Day;
import vestiary.cluster.Church;
import vestiary.cluster.ChurchCalendars;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;
import vestiary.people.FindPeople;
import vestiary.people.PersonRole;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;

/** Loads what decides who can celebrate where. */
@ApplicationScoped
class ReadScene {

  /** What is counted with another day, or driven from another night, lies no farther off. */
  private static final int DAYS_AROUND = 2;

  private final ReadCluster cluster;
  private final ReadMasses masses;
  private final ChurchCalendars calendars;
  private final ReadPriests priests;
  private final FindPeople people;
  private final KeepAsked asked;
  private final Clock clock;

  ReadScene(
      ReadCluster cluster,
      ReadMasses masses,
      ChurchCalendars calendars,
      ReadPriests priests,
      FindPeople people,
      KeepAsked asked,
      Clock clock) {
    this.cluster = cluster;
    this.masses = masses;
    this.calendars = calendars;
    this.priests = priests;
    this.people = people;
    this.asked = asked;
    this.clock = clock;
  }

  /**
   * Of some dates.
   *
   * @param last included
   */
  @Transactional
  Scene between(LocalDate first, LocalDate last) {
    Cluster here = cluster.cluster();
    List<Church> churches = cluster.churches();
    LocalDate from = first.minusDays(DAYS_AROUND);
    LocalDate to = last.plusDays(DAYS_AROUND);
    List<DatedMass> around = masses.between(from, to, here, churches);
    Instant begin = from.atStartOfDay(here.zone()).toInstant();
    Instant end = to.plusDays(1).atStartOfDay(here.zone()).toInstant();
    return new Scene(
        here,
        churches,
        first,
        last,
        clock.instant(),
        around,
        days(here, churches, from, to.plusDays(1)),
        priests.all(PersonRole.PRIEST, here, around, begin, end),
        priests.all(PersonRole.DEACON, here, around, begin, end),
        priests.visiting(here, begin, end),
        people.byId(),
        asked.of(around),
        Journeys.of(
            cluster.journeys().stream()
                .map(way -> new Journey(way.from(), way.to(), Duration.ofMinutes(way.minutes())))
                .toList()));
  }

  /** Whose clock tells which day it is. */
  @Transactional
  ZoneId zone() {
    return cluster.cluster().zone();
  }

  /** Around one Mass. */
  @Transactional
  Scene around(String mass) {
    LocalDate date = masses.get(mass).date();
    return between(date, date);
  }

  /** One Mass, even if it is cancelled. */
  @Transactional
  DatedMass mass(String id) {
    return masses.get(id);
  }

  private Map<Church, Map<LocalDate, Day>> days(
      Cluster here, List<Church> churches, LocalDate first, LocalDate last) {
    Map<Church, Map<LocalDate, Day>> days = new HashMap<>();
    for (Church church : churches) {
      days.put(
          church,
          calendars.of(here, church).days(first, last).stream()
              .collect(Collectors.toMap(Day::date, Function.identity())));
    }
    return days;
  }
}
