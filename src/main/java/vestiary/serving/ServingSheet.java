package vestiary.serving;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.people.FindPeople;
import vestiary.people.ReadAbsences;
import vestiary.people.ReadMinistries;
import vestiary.planning.RoleWords;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;
import vestiary.schedule.ServesAs;
import vestiary.schedule.WhoServes;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out who serves at one Mass, and whom to name. */
@ApplicationScoped
@Transactional
class ServingSheet {

  private final ReadMasses masses;
  private final FindPeople people;
  private final ReadMinistries ministries;
  private final ReadAbsences absences;
  private final Frames frames;

  ServingSheet(
      ReadMasses masses,
      FindPeople people,
      ReadMinistries ministries,
      ReadAbsences absences,
      Frames frames) {
    this.masses = masses;
    this.people = people;
    this.ministries = ministries;
    this.absences = absences;
    this.frames = frames;
  }

  /**
   * The page.
   *
   * @param typed what stands in its form
   */
  ServingView view(String id, ServingDone done, String problem, Entries typed) {
    DatedMass mass = masses.get(id);
    LocalDate date = mass.date();
    WhoCanServe who =
        new WhoCanServe(
            mass,
            masses.between(date.minusDays(1), date.plusDays(1)),
            people.all(),
            ministries.all(),
            absences.attendance(mass.start().toInstant(), mass.end().toInstant()));
    String address = "/masses/%s/serving".formatted(mass.id().value());
    return new ServingView(
        frames.of("week", address),
        "%s, %s, %s".formatted(Speech.day(date), Speech.clock(mass.start()), mass.church().name()),
        mass.church().id().value().toString(),
        List.of(
            new Link(say("The Mass"), "/masses/" + mass.id().value()),
            new Link(say("The day"), "/day/" + date),
            new Link(say("The week"), "/week/" + date)),
        done.sentence(),
        done.again(),
        problem,
        groups(mass, who, address),
        note(mass),
        mass.isCancelled(),
        address,
        typed.choice(
            "person",
            Stream.concat(
                Stream.of(Choice.Option.of("", say("Choose somebody"))), who.options().stream())),
        typed.choice("role", roles()));
  }

  private static Stream<Choice.Option> roles() {
    return Stream.concat(
        Stream.of(Choice.Option.of("", say("as it stands beside the name"))),
        Stream.of(ServesAs.values()).map(as -> Choice.Option.of(as.id(), say(as.noun(1)))));
  }

  private static List<ServingView.Group> groups(DatedMass mass, WhoCanServe who, String address) {
    Map<ServesAs, List<WhoServes>> byRole =
        mass.serving().stream()
            .collect(Collectors.groupingBy(WhoServes::as, TreeMap::new, Collectors.toList()));
    return byRole.entrySet().stream()
        .map(
            group ->
                new ServingView.Group(
                    Speech.sentence(say(group.getKey().noun(group.getValue().size()))),
                    group.getValue().stream().map(one -> named(one, who, address)).toList()))
        .toList();
  }

  private static ServingView.Named named(WhoServes one, WhoCanServe who, String address) {
    return new ServingView.Named(
        one.person().name(),
        who.hindrance(one.person()),
        "%s/%s/removal".formatted(address, one.person().slug()));
  }

  /** How many wear an alb, where names are counted for it. */
  private static String note(DatedMass mass) {
    List<String> counted =
        mass.ministers().further().stream()
            .map(one -> Speech.count(one.count(), RoleWords.noun(one.role())))
            .toList();
    return counted.isEmpty() ? "" : say("Albs are counted for %s.", Speech.list(counted));
  }
}
