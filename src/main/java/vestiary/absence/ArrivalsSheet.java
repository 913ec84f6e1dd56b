package vestiary.absence;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.stream.Stream;
import vestiary.people.Arrival;
import vestiary.people.Person;
import vestiary.schedule.DatedMass;
import vestiary.web.Choice;
import vestiary.web.English;
import vestiary.web.Field;
import vestiary.web.Frames;
import vestiary.web.Link;

/** Sets out the Masses to which one person comes. */
@ApplicationScoped
@Transactional
class ArrivalsSheet {

  private final ReadArrivals read;
  private final Frames frames;

  ArrivalsSheet(ReadArrivals read, Frames frames) {
    this.read = read;
    this.frames = frames;
  }

  ArrivalsView view(String slug, String done, String problem) {
    ReadArrivals.Arrivals found = read.of(slug);
    Person person = found.person();
    String page = "/people/" + person.slug();
    return new ArrivalsView(
        frames.of("settings", page + "/arrivals"),
        person.calledName(),
        done,
        problem,
        found.coming().stream().map(one -> coming(one, page)).toList(),
        List.of(new Link(person.name(), page), new Link("Everybody", "/people")));
  }

  private static ArrivalsView.Coming coming(ReadArrivals.Coming one, String page) {
    DatedMass mass = one.mass();
    String id = mass.id().value().toString();
    return new ArrivalsView.Coming(
        new Link(
            "%s, %s, %s"
                .formatted(
                    English.day(mass.date()), English.clock(mass.start()), mass.church().name()),
            "/masses/" + id),
        mass.church().id().value().toString(),
        id,
        one.findArrives()
            .map(at -> Field.of(English.clock(at.toZonedDateTime())))
            .orElse(Field.empty()),
        Choice.of(
            Stream.of(Arrival.Brings.values())
                .map(said -> new Choice.Option(said.id(), words(said), said == one.brings()))
                .toList()),
        "%s/arrivals/%s".formatted(page, id));
  }

  private static String words(Arrival.Brings brings) {
    return switch (brings) {
      case NOT_SAID -> "not said";
      case OWN -> "yes, his own";
      case NOTHING -> "no, he wears what is there";
    };
  }
}
