package vestiary.people;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.web.Frames;
import vestiary.web.Link;

/** Sets out everybody. */
@ApplicationScoped
@Transactional
class PeopleSheet {

  private record Heading(String title, Set<PersonRole> roles) {}

  private static final List<Heading> HEADINGS =
      List.of(
          new Heading(word("Priests and bishops"), Set.of(PersonRole.PRIEST, PersonRole.BISHOP)),
          new Heading(word("Deacons"), Set.of(PersonRole.DEACON)),
          new Heading(word("Servers"), Set.of(PersonRole.SERVER)),
          new Heading(word("Readers"), Set.of(PersonRole.READER)),
          new Heading(word("Sacristans"), Set.of(PersonRole.SACRISTAN)),
          new Heading(word("Others"), Set.of(PersonRole.ADMINISTRATOR, PersonRole.MINISTER)));

  private final FindPeople people;
  private final Children children;
  private final ReadMinistries ministries;
  private final ReadAbsences absences;
  private final ReadCluster cluster;
  private final Frames frames;
  private final Clock clock;

  PeopleSheet(
      FindPeople people,
      Children children,
      ReadMinistries ministries,
      ReadAbsences absences,
      ReadCluster cluster,
      Frames frames,
      Clock clock) {
    this.people = people;
    this.children = children;
    this.ministries = ministries;
    this.absences = absences;
    this.cluster = cluster;
    this.frames = frames;
    this.clock = clock;
  }

  PeopleView view(String done) {
    List<Person> all = people.all();
    Facts facts =
        new Facts(
            cluster.churches(), ministries.all(), children.all(), away(), cluster.cluster().zone());
    return new PeopleView(
        frames.of("settings", "/people"),
        done,
        HEADINGS.stream()
            .map(
                heading ->
                    new PeopleView.Group(
                        say(heading.title()),
                        all.stream()
                            .filter(p -> heading.roles().contains(p.role()))
                            .map(p -> row(p, facts))
                            .toList()))
            .filter(group -> !group.people().isEmpty())
            .toList());
  }

  /** What is known of everybody, read once. */
  private record Facts(
      List<Church> churches,
      Map<UUID, Ministry> ministries,
      Set<UUID> young,
      List<Absence> away,
      ZoneId zone) {}

  private List<Absence> away() {
    Instant now = clock.instant();
    return absences.between(now, now.plusNanos(1_000));
  }

  private PeopleView.Row row(Person person, Facts facts) {
    Ministry ministry = facts.ministries().getOrDefault(person.id(), Ministry.UNSAID);
    String about =
        String.join(
            "; ",
            Stream.of(
                    person.isVisiting() ? say("from outside") : "",
                    MinistryWords.role(person),
                    MinistryWords.churches(ministry, facts.churches()),
                    MinistryWords.languages(ministry))
                .filter(said -> !said.isEmpty())
                .toList());
    Optional<Absence> away =
        facts.away().stream().filter(one -> one.person().equals(person.id())).findFirst();
    return new PeopleView.Row(
        new Link(name(person, facts), "/people/" + person.slug()),
        wholeName(person, facts),
        about,
        away.map(one -> say("not available %s", AbsenceWords.span(one, facts.zone()))).orElse(""));
  }

  private static String name(Person person, Facts facts) {
    return facts.young().contains(person.id())
        ? person.name() + say(", under 18")
        : person.calledName();
  }

  /** For whoever is responsible. */
  private String wholeName(Person person, Facts facts) {
    return facts.young().contains(person.id())
        ? children.find(person.id()).map(Children.Child::wholeName).orElse("")
        : "";
  }
}
