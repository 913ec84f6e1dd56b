package vestiary.assigning;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.calendar.Day;
import vestiary.calendar.MassKind;
import vestiary.cluster.CountBy;
import vestiary.people.Person;
import vestiary.planning.MassWords;
import vestiary.schedule.DatedMass;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Ribbon;
import vestiary.web.Speech;

/** Sets out who celebrates where. */
@ApplicationScoped
class CelebrantsSheet {

  private final Frames frames;

  CelebrantsSheet(Frames frames) {
    this.frames = frames;
  }

  CelebrantsView of(Scene scene, List<Done> done) {
    Dates dates = new Dates(scene.first(), scene.last());
    return new CelebrantsView(
        frames.of("week", dates.address()),
        Speech.span(scene.first(), scene.last()),
        lead(scene),
        done,
        turn(dates),
        scene.first().datesUntil(scene.last().plusDays(1)).map(date -> day(scene, date)).toList(),
        CountShares.of(scene, scene.asNow()),
        sharesNote(scene),
        isAhead(scene)
            ? new Link(say("Propose celebrants"), "/celebrants/proposal?" + dates.query())
            : Link.NONE,
        scene.priests().stream()
            .map(priest -> scene.person(priest.id()))
            .map(one -> new CelebrantsView.Choosable(one.slug(), one.calledName()))
            .toList(),
        scene.first().toString(),
        scene.last().toString());
  }

  static List<Link> turn(Dates dates) {
    return List.of(
        new Link(say("← earlier"), dates.earlier().address()),
        new Link(say("later →"), dates.later().address()),
        dates.isWeek()
            ? new Link(say("The month"), Dates.month(dates.first()).address())
            : new Link(say("A week"), Dates.week(dates.first()).address()),
        new Link(say("The Masses"), "/week/" + dates.first()));
  }

  private static String lead(Scene scene) {
    List<DatedMass> masses =
        scene.masses().stream().filter(scene::isWithin).filter(m -> m.kind().isMass()).toList();
    long open = masses.stream().filter(CelebrantsSheet::isOpen).count();
    String all = Speech.sentence(Speech.count(masses.size(), "Mass")) + ".";
    String named =
        open == 0
            ? all + say(" Somebody is named for each.")
            : say("%s Nobody is named for %s of them.", all, Speech.count((int) open));
    int away = (int) masses.stream().filter(mass -> isMissed(mass, scene)).count();
    return switch (away) {
      case 0 -> named;
      case 1 -> named + say(" The celebrant of one of them is not available then.");
      default ->
          named + say(" The celebrants of %s of them are not available then.", Speech.count(away));
    };
  }

  /** Whether whoever is named for a Mass or other liturgy ahead is away then. */
  private static boolean isMissed(DatedMass mass, Scene scene) {
    return scene.isAhead(mass) && StandIns.isAway(mass, scene);
  }

  private static boolean isOpen(DatedMass mass) {
    return mass.findCelebrant().isEmpty() && !mass.ministers().bishop();
  }

  private static boolean isAhead(Scene scene) {
    return scene.masses().stream()
        .anyMatch(mass -> scene.isWithin(mass) && mass.start().toInstant().isAfter(scene.now()));
  }

  static String sharesNote(Scene scene) {
    return say(
        "Early is before %s, far is %d minutes or more from the church in which he celebrates most; minutes are those of driving. %s Concelebrating counts (can. 905).",
        Ask.EARLY,
        Ask.FAR.toMinutes(),
        scene.cluster().policies().countBy() == CountBy.CALENDAR
            ? say("Masses are counted by the calendar day.")
            : say("Masses are counted by the liturgical day, evenings before with their Sunday."));
  }

  private static CelebrantsView.OnDay day(Scene scene, LocalDate date) {
    List<DatedMass> masses =
        scene.masses().stream().filter(mass -> mass.date().equals(date)).toList();
    Locale locale = Speech.localeOr(scene.cluster().language());
    String kept =
        masses.stream()
            .map(mass -> scene.days().get(mass.church()).get(date))
            .map(Day::kept)
            .map(celebration -> celebration.name().in(locale))
            .findFirst()
            .orElse("");
    return new CelebrantsView.OnDay(
        Speech.day(date),
        kept,
        masses.stream()
            .map(mass -> scene.days().get(mass.church()).get(date))
            .anyMatch(Day::obligation),
        masses.stream().map(mass -> line(mass, scene)).toList());
  }

  private static CelebrantsView.Line line(DatedMass mass, Scene scene) {
    return new CelebrantsView.Line(
        Speech.clock(mass.start()),
        mass.church().name(),
        mass.kind() == MassKind.OF_THE_DAY
            ? Speech.sentence(MassWords.noun(mass))
            : Speech.sentence(MassWords.whole(mass, Speech.localeOr(scene.cluster().language()))),
        new Ribbon(mass.colour(), Speech.colour(mass.colour())),
        celebrant(mass),
        mass.named().stream().map(Person::tightName).collect(Collectors.joining(", ")),
        isOpen(mass) && mass.kind().isMass(),
        isMissed(mass, scene),
        mass.kind().isMass() && !mass.ministers().bishop()
            ? "/masses/%s/celebrant".formatted(mass.id().value())
            : "/masses/" + mass.id().value());
  }

  private static String celebrant(DatedMass mass) {
    return Stream.concat(
            mass.findCelebrant().map(Person::tightName).stream(),
            Stream.of(mass.ministers().bishop() ? say("the bishop") : ""))
        .findFirst()
        .orElseThrow();
  }
}
