package vestiary.assigning;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.calendar.Leave;
import vestiary.calendar.MassOption;
import vestiary.calendar.MassRuling;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.problem.Refused;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;
import vestiary.schedule.Usual;
import vestiary.vesting.MassId;
import vestiary.vesting.Ministers;
import vestiary.web.Entries;

/** The Mass that stands in a form, as far as it decides who can celebrate it. */
@ApplicationScoped
class TypedMass {

  private static final int USUAL_MINUTES = 60;
  private static final int LONGEST = 360;
  private static final String UUID_FORM = "[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}";

  private final ReadCluster cluster;
  private final ReadMasses masses;
  private final ReadScene read;
  private final FindPeople people;

  TypedMass(ReadCluster cluster, ReadMasses masses, ReadScene read, FindPeople people) {
    this.cluster = cluster;
    this.masses = masses;
    this.read = read;
    this.people = people;
  }

  /**
   * What was found.
   *
   * @param celebrant the one who is typed; empty if nobody is, or nobody is known by that name
   */
  record Found(Scene scene, DatedMass mass, Optional<Person> celebrant) {}

  /** Empty while too little stands there, and for what is no Mass. */
  @Transactional
  Optional<Found> find(Entries input) {
    Optional<Church> church = cluster.findChurch(input.text("church"));
    Optional<LocalDateTime> start = start(input);
    if (church.isEmpty() || start.isEmpty() || input.isTicked("bishop")) {
      return Optional.empty();
    }
    Optional<Person> celebrant =
        Optional.of(input.text("celebrant").strip())
            .filter(name -> !name.isEmpty())
            .flatMap(people::findCalled);
    DatedMass mass = mass(input, church.get(), start.get(), celebrant);
    if (!mass.kind().isMass()) {
      return Optional.empty();
    }
    LocalDate date = mass.date();
    return Optional.of(new Found(read.between(date, date), mass, celebrant));
  }

  private DatedMass mass(
      Entries input, Church church, LocalDateTime start, Optional<Person> celebrant) {
    MassRuling ruling =
        masses.ruling(church, start, input.text("mass"), input.text("votiveOf"), Leave.NONE);
    MassOption option = ruling.options().get(0);
    ZonedDateTime begin = start.atZone(cluster.cluster().zone());
    return new DatedMass(
        new MassId(id(input)),
        church,
        begin,
        Duration.ofMinutes(minutes(input)),
        ruling,
        option,
        option.colours().get(0),
        celebrant.stream().toList(),
        List.of(),
        new Ministers(false, 0, 0, List.of()),
        new DatedMass.Chosen(
            "", "", "", "", "", -1, "", "", language(input), false, false, false, false, 0),
        new Usual(false, begin, church),
        List.of(),
        List.of());
  }

  /** A new Mass has no id as yet, and takes nobody's place. */
  private static UUID id(Entries input) {
    String id = input.text("id");
    return id.matches(UUID_FORM) ? UUID.fromString(id) : new UUID(0, 0);
  }

  /** The first of the cluster is kept as nothing said. */
  private String language(Entries input) {
    String tag = input.text("language");
    return tag.equals(cluster.cluster().language().toLanguageTag()) ? "" : tag;
  }

  private static long minutes(Entries input) {
    String minutes = input.text("minutes").strip();
    return minutes.matches("[1-9][0-9]{0,2}")
        ? Math.min(LONGEST, Long.parseLong(minutes))
        : USUAL_MINUTES;
  }

  private static Optional<LocalDateTime> start(Entries input) {
    try {
      LocalDate date = Dates.date(input.text("date"));
      return Optional.of(date.atTime(LocalTime.parse(input.text("time"))));
    } catch (DateTimeException | Refused incomplete) {
      return Optional.empty();
    }
  }
}
