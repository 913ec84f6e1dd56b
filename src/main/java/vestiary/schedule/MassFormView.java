package vestiary.schedule;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.cluster.Church;
import vestiary.cluster.Closings;
import vestiary.cluster.Policies;
import vestiary.cluster.ReadCluster;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Fills the form of a Mass. */
@ApplicationScoped
class MassFormView {

  private final ReadCluster cluster;
  private final ReadMasses read;
  private final FindPeople people;
  private final PlanFit fit;
  private final Frames frames;
  private final CurrentVisitor visitor;
  private final Closings closings;
  private final Clock clock;

  MassFormView(
      ReadCluster cluster,
      ReadMasses read,
      FindPeople people,
      PlanFit fit,
      Frames frames,
      CurrentVisitor visitor,
      Closings closings,
      Clock clock) {
    this.closings = closings;
    this.clock = clock;
    this.visitor = visitor;
    this.cluster = cluster;
    this.read = read;
    this.people = people;
    this.fit = fit;
    this.frames = frames;
  }

  /** The form of a new Mass, with what was typed so far. */
  MassForm fresh(Entries input, String problem) {
    return form(
        input,
        say("A new Mass"),
        "/masses",
        "",
        Choice.of(List.of()),
        "",
        "",
        problem,
        MassForm.Saved.NONE,
        List.of(),
        weekOf(input),
        "",
        "",
        "");
  }

  /** The form of a Mass as it is stored. */
  MassForm stored(DatedMass mass, MassForm.Saved saved) {
    return of(mass, MassEntries.from(mass), saved, "");
  }

  /** The form of a Mass with what was typed over it. */
  MassForm typed(DatedMass mass, Entries input, String problem) {
    return of(mass, input, MassForm.Saved.NONE, problem);
  }

  private MassForm of(DatedMass mass, Entries input, MassForm.Saved saved, String problem) {
    String address = "/masses/" + mass.id().value();
    boolean cancelled = mass.chosen().cancelled();
    String title =
        "%s, %s, %s"
            .formatted(Speech.day(mass.date()), Speech.clock(mass.start()), mass.church().name());
    return form(
        input,
        title,
        address,
        DepartureWords.of(mass),
        cancelled ? Choice.of(List.of()) : instead(mass),
        cancelled ? "" : address + "/cancellation",
        cancelled ? address + "/restoration" : "",
        problem,
        saved,
        fit.within(mass.date(), mass.date()),
        List.of(
            new Link(say("Who wears what"), address + "/vesture"),
            new Link(say("Who serves"), address + "/serving"),
            new Link(say("Set-out sheet"), address + "/set-out"),
            new Link(say("Set vestments aside"), cancelled ? "" : setAside(mass)),
            new Link(say("The day"), "/day/" + mass.date()),
            new Link(say("The week"), "/week/" + mass.date())),
        mass.church().id().value().toString(),
        Speech.sentence(ServingWords.of(mass)),
        input.text("version"));
  }

  /** Masses of the day before to the day after, where everybody could go instead. */
  private Choice instead(DatedMass mass) {
    return Choice.of(
        Stream.concat(
                Stream.of(new Choice.Option("", say("No other Mass: it is simply not said"), true)),
                read.between(mass.date().minusDays(1), mass.date().plusDays(1)).stream()
                    .filter(other -> !other.id().equals(mass.id()))
                    .map(MassFormView::option))
            .toList());
  }

  private static Choice.Option option(DatedMass other) {
    return Choice.Option.of(
        other.id().value().toString(),
        "%s, %s, %s"
            .formatted(
                other.church().name(), Speech.day(other.date()), Speech.clock(other.start())));
  }

  private static String setAside(DatedMass mass) {
    return "/reservations/new?mass=" + mass.id().value();
  }

  MassChoices choices(Entries input) {
    Optional<LocalDateTime> start = findStart(input);
    Optional<Church> church = cluster.findChurch(input.text("church"));
    if (start.isEmpty() || church.isEmpty()) {
      return OfferedChoices.unknown(input);
    }
    return new OfferedChoices(
            (kind, leave) ->
                read.ruling(church.get(), start.get(), kind, input.text("votiveOf"), leave),
            input,
            Speech.localeOr(cluster.cluster().language()))
        .choices();
  }

  private MassForm form(
      Entries input,
      String title,
      String action,
      String departs,
      Choice instead,
      String cancelAction,
      String restoreAction,
      String problem,
      MassForm.Saved saved,
      List<PlanFit.Unfit> unfit,
      List<Link> turn,
      String churchId,
      String serving,
      String version) {
    Policies policies = cluster.cluster().policies();
    return new MassForm(
        frames.of("week", action),
        title,
        action,
        departs,
        instead,
        cancelAction,
        restoreAction,
        problem,
        saved,
        unfit,
        turn,
        churchId,
        serving,
        churches(input),
        input.field("date"),
        input.field("time"),
        input.field("minutes"),
        choices(input),
        input.field("celebrant"),
        people.all().stream().filter(p -> p.role().canCelebrate()).map(Person::name).toList(),
        input.field("concelebrants"),
        input.field("deacons"),
        input.isTicked("bringsPrincipal"),
        input.field("bringsConcelebrants"),
        besides(input),
        input.field("setOutMinutes"),
        say(
            "Empty: the church's own minutes on Sundays and holy days, %d on weekdays, %d for a large liturgy",
            policies.weekdaySetOut(), policies.largeSetOut()),
        input.field("note"),
        MassLanguage.choice(input, cluster.cluster()),
        visitor.visitor().may(Action.SEE_INTENTIONS),
        input.field("intention"),
        version);
  }

  private static MassForm.Besides besides(Entries input) {
    return new MassForm.Besides(
        input.field("named"),
        input.isTicked("bishop"),
        input.field("servers"),
        input.field("acolytes"),
        input.field("readers"),
        input.field("others"),
        input.field(MinistersEntries.SERVER_SIZES),
        input.isTicked("alsoCope"),
        input.isTicked("alsoVeil"));
  }

  private Choice churches(Entries input) {
    return input.choice(
        "church",
        closings.open(cluster.churches(), today(), input.text("church")).stream()
            .filter(c -> visitor.isOffered(Action.ENTER_MASSES, c.id().value()))
            .map(
                c ->
                    Choice.Option.of(
                        c.slug(), c.place().isEmpty() ? c.name() : c.name() + ", " + c.place())));
  }

  private LocalDate today() {
    return LocalDate.now(clock.withZone(cluster.cluster().zone()));
  }

  private static List<Link> weekOf(Entries input) {
    return findDate(input)
        .map(d -> List.of(new Link(say("The week"), "/week/" + d)))
        .orElse(List.of());
  }

  private static Optional<LocalDateTime> findStart(Entries input) {
    try {
      return findDate(input).map(d -> d.atTime(LocalTime.parse(input.text("time"))));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static Optional<LocalDate> findDate(Entries input) {
    try {
      LocalDate date = LocalDate.parse(input.text("date"));
      boolean known =
          !date.isBefore(LiturgicalCalendar.FIRST) && date.isBefore(LiturgicalCalendar.LAST);
      return known ? Optional.of(date) : Optional.empty();
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
