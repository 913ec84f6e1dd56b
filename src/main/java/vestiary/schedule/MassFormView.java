package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.cluster.Church;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.web.Choice;
import vestiary.web.English;
import vestiary.web.Frames;
import vestiary.web.Link;

/** Fills the form of a Mass. */
@ApplicationScoped
class MassFormView {

  private final ReadCluster cluster;
  private final ReadMasses read;
  private final FindPeople people;
  private final Frames frames;

  MassFormView(ReadCluster cluster, ReadMasses read, FindPeople people, Frames frames) {
    this.cluster = cluster;
    this.read = read;
    this.people = people;
    this.frames = frames;
  }

  /** The form of a new Mass, with what was typed so far. */
  MassForm ofNew(MassInput input, String problem) {
    return form(
        input, "A new Mass", "/masses", "", "", problem, MassForm.Saved.NONE, weekOf(input), "");
  }

  /** The form of a Mass that is entered. */
  MassForm of(DatedMass mass, MassInput input, MassForm.Saved saved, String problem) {
    String address = "/masses/" + mass.id().value();
    boolean cancelled = mass.chosen().cancelled();
    String title =
        "%s, %s, %s"
            .formatted(English.day(mass.date()), English.clock(mass.start()), mass.church().name());
    return form(
        input,
        title,
        address,
        cancelled ? "" : address + "/cancellation",
        cancelled ? address + "/restoration" : "",
        problem,
        saved,
        List.of(
            new Link("The day", "/day/" + mass.date()),
            new Link("The week", "/week/" + mass.date())),
        input.text("version").isEmpty()
            ? String.valueOf(mass.chosen().version())
            : input.text("version"));
  }

  MassChoices choices(MassInput input) {
    Optional<LocalDateTime> start = findStart(input);
    Optional<Church> church = cluster.findChurch(input.text("church"));
    if (start.isEmpty() || church.isEmpty()) {
      return OfferedChoices.unknown(input);
    }
    return new OfferedChoices(
            (kind, leave) -> read.ruling(church.get(), start.get(), kind, input.votiveOf(), leave),
            input,
            cluster.cluster().language())
        .choices();
  }

  private MassForm form(
      MassInput input,
      String title,
      String action,
      String cancelAction,
      String restoreAction,
      String problem,
      MassForm.Saved saved,
      List<Link> turn,
      String version) {
    Cluster here = cluster.cluster();
    return new MassForm(
        frames.of("week", action),
        title,
        action,
        cancelAction,
        restoreAction,
        problem,
        saved,
        turn,
        churches(input),
        input.field("date"),
        input.field("time"),
        input.field("minutes"),
        choices(input),
        input.field("celebrant"),
        people.all().stream().filter(p -> p.role().canCelebrate()).map(Person::name).toList(),
        input.field("concelebrants"),
        input.field("deacons"),
        input.bringsPrincipal(),
        input.field("bringsConcelebrants"),
        input.field("setOutMinutes"),
        "Empty: the church's own minutes on Sundays and holy days, %d on weekdays, %d for a large liturgy"
            .formatted(here.policies().weekdaySetOut(), here.policies().largeSetOut()),
        input.field("note"),
        true,
        input.field("intention"),
        version);
  }

  private Choice churches(MassInput input) {
    return new Choice(
        cluster.churches().stream()
            .map(
                c ->
                    new Choice.Option(
                        c.slug(),
                        c.place().isEmpty() ? c.name() : c.name() + ", " + c.place(),
                        c.slug().equals(input.text("church"))))
            .toList(),
        input.error("church"));
  }

  private static List<Link> weekOf(MassInput input) {
    return findDate(input).map(d -> List.of(new Link("The week", "/week/" + d))).orElse(List.of());
  }

  private static Optional<LocalDateTime> findStart(MassInput input) {
    try {
      return findDate(input).map(d -> d.atTime(LocalTime.parse(input.text("time"))));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static Optional<LocalDate> findDate(MassInput input) {
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
