package vestiary.absence;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.cluster.ReadCluster;
import vestiary.people.Arrival;
import vestiary.people.FindPeople;
import vestiary.people.KeepArrival;
import vestiary.people.Person;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out the Masses to which one person comes. */
@ApplicationScoped
@Transactional
class ArrivalsSheet {

  private final FindPeople people;
  private final ReadMasses masses;
  private final KeepArrival arrivals;
  private final ReadCluster cluster;
  private final Frames frames;
  private final Clock clock;

  ArrivalsSheet(
      FindPeople people,
      ReadMasses masses,
      KeepArrival arrivals,
      ReadCluster cluster,
      Frames frames,
      Clock clock) {
    this.people = people;
    this.masses = masses;
    this.arrivals = arrivals;
    this.cluster = cluster;
    this.frames = frames;
    this.clock = clock;
  }

  ArrivalsView view(String slug, String done, String problem) {
    Person person = people.get(slug);
    ZoneId zone = cluster.cluster().zone();
    LocalDate today = LocalDate.now(clock.withZone(zone));
    LocalDate last = today.plusDays(WhatItTouches.DAYS_AHEAD);
    List<Arrival> known =
        arrivals.between(start(today, zone), start(last.plusDays(2), zone)).stream()
            .filter(one -> one.person().equals(person.id()))
            .toList();
    String page = "/people/" + person.slug();
    return new ArrivalsView(
        frames.of("settings", page + "/arrivals"),
        person.calledName(),
        done,
        problem,
        masses.between(today, last).stream()
            .filter(mass -> mass.people().stream().anyMatch(p -> p.id().equals(person.id())))
            .map(mass -> coming(mass, known, page, zone))
            .toList(),
        List.of(new Link(person.name(), page), new Link(say("Everybody"), "/people")));
  }

  private static ArrivalsView.Coming coming(
      DatedMass mass, List<Arrival> known, String page, ZoneId zone) {
    String id = mass.id().value().toString();
    Optional<Arrival> said =
        known.stream().filter(one -> one.mass().equals(mass.id().value())).findFirst();
    Arrival.Brings brings = said.map(Arrival::brings).orElse(Arrival.Brings.NOT_SAID);
    return new ArrivalsView.Coming(
        new Link(
            "%s, %s, %s"
                .formatted(
                    Speech.day(mass.date()), Speech.clock(mass.start()), mass.church().name()),
            "/masses/" + id),
        mass.church().id().value().toString(),
        id,
        said.map(one -> Field.of(Speech.clock(one.arrives().atZone(zone)))).orElse(Field.empty()),
        Choice.of(
            Stream.of(Arrival.Brings.values())
                .map(one -> new Choice.Option(one.id(), words(one), one == brings))
                .toList()),
        "%s/arrivals/%s".formatted(page, id));
  }

  private static String words(Arrival.Brings brings) {
    return switch (brings) {
      case NOT_SAID -> say("not said");
      case OWN -> say("yes, his own");
      case NOTHING -> say("no, he wears what is there");
    };
  }

  private static Instant start(LocalDate date, ZoneId zone) {
    return date.atStartOfDay(zone).toInstant();
  }
}
