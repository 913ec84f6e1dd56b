package vestiary.absence;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.stream.Stream;
import vestiary.people.Arrival;
import vestiary.people.Person;
import vestiary.schedule.DatedMass;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

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
        person.inWords(),
        done,
        problem,
        found.coming().stream().map(one -> coming(one, page)).toList(),
        List.of(new Link(person.name(), page), new Link(say("Everybody"), "/people")));
  }

  private static ArrivalsView.Coming coming(ReadArrivals.Coming one, String page) {
    DatedMass mass = one.mass();
    String id = mass.id().value().toString();
    return new ArrivalsView.Coming(
        new Link(
            "%s, %s, %s"
                .formatted(
                    Speech.day(mass.date()), Speech.clock(mass.start()), mass.church().name()),
            "/masses/" + id),
        mass.church().id().value().toString(),
        id,
        one.findArrives()
            .map(at -> Field.of(Speech.clock(at.toZonedDateTime())))
            .orElse(Field.empty()),
        Choice.of(
            Stream.of(Arrival.Brings.values())
                .map(said -> new Choice.Option(said.id(), words(said), said == one.brings()))
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
}
