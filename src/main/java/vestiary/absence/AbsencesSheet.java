package vestiary.absence;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.IntStream;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.cluster.ReadCluster;
import vestiary.people.Absence;
import vestiary.people.AbsenceWords;
import vestiary.people.Attendance;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.people.ReadAbsences;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out who is away, week by week from a Monday. */
@ApplicationScoped
@Transactional
class AbsencesSheet {

  /** A rota is commonly made for two months (common practice, no source). */
  private static final int WEEKS = 8;

  private static final int DAYS = 7;

  private final ReadAbsences absences;
  private final FindPeople people;
  private final ReadCluster cluster;
  private final CurrentVisitor visitor;
  private final Frames frames;
  private final Clock clock;

  AbsencesSheet(
      ReadAbsences absences,
      FindPeople people,
      ReadCluster cluster,
      CurrentVisitor visitor,
      Frames frames,
      Clock clock) {
    this.absences = absences;
    this.people = people;
    this.cluster = cluster;
    this.visitor = visitor;
    this.frames = frames;
    this.clock = clock;
  }

  /** The Monday of the present week. */
  LocalDate monday() {
    return LocalDate.now(clock.withZone(zone()))
        .with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
  }

  AbsencesView view(LocalDate day) {
    LocalDate monday = day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    LocalDate end = monday.plusWeeks(WEEKS);
    Attendance all = absences.attendance(start(monday), start(end));
    Map<UUID, String> reasons = absences.reasons(all.absences());
    Map<UUID, Person> known = people.byId();
    List<AbsencesView.Week> weeks =
        IntStream.range(0, WEEKS)
            .mapToObj(monday::plusWeeks)
            .map(week -> week(week, all, known, reasons))
            .toList();
    return new AbsencesView(
        frames.of("settings", "/absences?from=" + monday),
        Speech.span(monday, end.minusDays(1)),
        lead(all),
        List.of(
            new Link(say("← Earlier"), "/absences?from=" + monday.minusWeeks(WEEKS)),
            new Link(say("Later →"), "/absences?from=" + end),
            new Link(say("People"), "/people")),
        weeks);
  }

  private AbsencesView.Week week(
      LocalDate monday, Attendance all, Map<UUID, Person> known, Map<UUID, String> reasons) {
    Instant from = start(monday);
    Instant until = start(monday.plusDays(DAYS));
    return new AbsencesView.Week(
        Speech.span(monday, monday.plusDays(DAYS - 1L)),
        TouchedWords.nobodyLeft(all.gaps(from, until), zone()),
        all.absences().stream()
            .filter(one -> one.meets(from, until))
            .map(one -> away(one, known.get(one.person()), reasons))
            .toList());
  }

  private AbsencesView.Away away(Absence one, Person person, Map<UUID, String> reasons) {
    String page = "/people/" + person.slug();
    boolean keeps = visitor.visitor().may(Action.KEEP_PEOPLE);
    return new AbsencesView.Away(
        new Link(person.calledName(), keeps ? page + "/absences" : page),
        AbsenceWords.span(one, zone()),
        reasons.getOrDefault(one.id(), ""));
  }

  private static String lead(Attendance all) {
    int away = (int) all.absences().stream().map(Absence::person).distinct().count();
    return switch (away) {
      case 0 -> say("Everybody is available.");
      case 1 -> say("One person is away for some of the time.");
      default ->
          say("%s people are away for some of the time.", Speech.sentence(Speech.count(away)));
    };
  }

  private Instant start(LocalDate date) {
    return date.atStartOfDay(zone()).toInstant();
  }

  private ZoneId zone() {
    return cluster.cluster().zone();
  }
}
