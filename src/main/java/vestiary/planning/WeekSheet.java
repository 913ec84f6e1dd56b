package vestiary.planning;

import static vestiary.web.Speech.say;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import vestiary.calendar.Day;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.cluster.Church;
import vestiary.cluster.ChurchCalendars;
import vestiary.schedule.DatedMass;
import vestiary.schedule.DepartureWords;
import vestiary.schedule.PlanFit;
import vestiary.vesting.MassId;
import vestiary.web.DayWords;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Speech;
import vestiary.web.Standing;

/** Sets out a week: days down, churches across, what stands in the way at the foot. */
final class WeekSheet {

  /** More churches than this do not fit side by side on a page or a sheet of paper. */
  private static final int MOST_COLUMNS = 7;

  static final int DAYS = 7;

  private final SpanToCheck span;
  private final List<DatedMass> departing;
  private final LocalDate monday;
  private final List<DatedMass> masses;
  private final List<Clash> clashes;
  private final List<Clash> later;
  private final ChurchCalendars calendars;
  private final List<String> chosen;
  private final Locale locale;

  /**
   * A sheet for the first week of a fortnight.
   *
   * @param span fourteen days from a Monday, of which the second seven are only announced
   * @param departing Masses of the first week that are cancelled or moved
   * @param chosen short names of the churches the reader wants to see; empty for all that fit
   */
  WeekSheet(
      SpanToCheck span,
      List<DatedMass> departing,
      List<Clash> clashes,
      ChurchCalendars calendars,
      List<String> chosen) {
    this.span = span;
    this.departing = List.copyOf(departing);
    this.monday = span.first();
    LocalDate next = monday.plusDays(DAYS);
    this.masses = span.asked().stream().filter(m -> m.date().isBefore(next)).toList();
    this.clashes = clashes.stream().filter(c -> c.first().date().isBefore(next)).toList();
    this.later = clashes.stream().filter(c -> !c.first().date().isBefore(next)).toList();
    this.calendars = calendars;
    this.chosen = List.copyOf(chosen);
    this.locale = Speech.localeOr(span.cluster().language());
  }

  /** The Monday of the week in which a date lies. */
  static LocalDate monday(LocalDate date) {
    return date.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
  }

  /**
   * The page.
   *
   * @param done what was just done; may be empty
   * @param unfit plans of this week that do not fit any more
   */
  WeekView view(Frame frame, String done, List<PlanFit.Unfit> unfit) {
    LiturgicalCalendar calendar = calendars.plain(span.cluster());
    List<Day> days = calendar.days(monday, monday.plusDays(DAYS));
    Day sunday = days.get(DAYS - 1);
    return new WeekView(
        frame,
        done,
        DayWords.season(days.get(0)),
        DayWords.cycles(days.get(0), sunday),
        Speech.span(monday, monday.plusDays(DAYS - 1L)),
        List.of(
            new Link("← " + Speech.date(monday.minusWeeks(1)), "/week/" + monday.minusWeeks(1)),
            new Link(Speech.date(monday.plusWeeks(1)) + " →", "/week/" + monday.plusWeeks(1)),
            new Link(
                say("Set-out sheets of the weekend"),
                "/set-out?from=%s&to=%s".formatted(monday.plusDays(5), monday.plusDays(6)))),
        new Link(say("Add a Mass"), "/masses/new?date=" + monday),
        new WeekView.Plan(monday.toString(), monday.plusDays(DAYS - 1L).toString(), plans(), unfit),
        standing(),
        choice(),
        columns().stream().map(c -> new WeekView.Church(c.name(), c.place())).toList(),
        IntStream.range(0, DAYS).mapToObj(i -> day(days.get(i), days.get(i + 1))).toList(),
        notes(),
        ahead(),
        span.churches().isEmpty()
            ? say("No church is entered yet. Masses come after it: enter one, or bring in a list.")
            : "");
  }

  private List<Link> plans() {
    Set<MassId> week = masses.stream().map(DatedMass::id).collect(Collectors.toSet());
    boolean planned =
        span.taken().planned().stream().anyMatch(one -> week.contains(one.wearer().mass()));
    Link times = new Link(say("Regular Mass times"), "/patterns");
    Link aside = new Link(say("What is set aside"), "/reservations?week=" + monday);
    return planned
        ? List.of(
            new Link(say("The plan that holds"), "/plans/of/" + monday),
            new Link(say("The journeys"), "/movements?week=" + monday),
            aside,
            times)
        : List.of(aside, times);
  }

  private Standing standing() {
    return StandingWords.of(MassWords.counted(masses), clashes);
  }

  private List<Church> columns() {
    List<Church> wanted = span.churches().stream().filter(c -> chosen.contains(c.slug())).toList();
    List<Church> shown = wanted.isEmpty() ? span.churches() : wanted;
    return shown.subList(0, Math.min(shown.size(), MOST_COLUMNS));
  }

  private WeekView.Choice choice() {
    if (span.churches().size() <= MOST_COLUMNS) {
      return WeekView.Choice.NONE;
    }
    List<Church> shown = columns();
    return new WeekView.Choice(
        "/week/" + monday,
        say(
            "%s of %s are shown.",
            Speech.sentence(Speech.count(shown.size())),
            Speech.count(span.churches().size(), "church")),
        span.churches().stream()
            .map(c -> new WeekView.Option(c.slug(), c.name(), c.place(), shown.contains(c)))
            .toList());
  }

  private WeekView.Day day(Day day, Day next) {
    LocalDate date = day.date();
    return new WeekView.Day(
        date.toString(),
        String.valueOf(date.getDayOfMonth()),
        Speech.weekday(date),
        "/day/" + date,
        date.getDayOfWeek() == DayOfWeek.SUNDAY || day.obligation(),
        Speech.colours(DayWords.colours(day)),
        DayWords.ribbons(day),
        DayWords.column(day, next, locale),
        day.obligation() && date.getDayOfWeek() != DayOfWeek.SUNDAY
            ? say("holy day of obligation")
            : "",
        columns().stream().map(church -> cell(church, day)).toList());
  }

  private WeekView.Cell cell(Church church, Day day) {
    Day own = calendars.of(span.cluster(), church).day(day.date());
    boolean same = own.kept().isKeptLike(day.kept());
    return new WeekView.Cell(
        church.name(),
        same
            ? List.of()
            : List.of(
                new WeekView.Own(
                    DayWords.ribbon(own.kept().colours().get(0)),
                    DayWords.tight("", own.kept(), own, locale))),
        masses.stream()
            .filter(m -> m.church().id().equals(church.id()) && m.date().equals(day.date()))
            .map(this::entry)
            .toList(),
        departing.stream()
            .filter(m -> m.usual().church().id().equals(church.id()))
            .filter(m -> m.usual().start().toLocalDate().equals(day.date()))
            .map(m -> new Link(DepartureWords.of(m), "/masses/" + m.id().value()))
            .toList());
  }

  private WeekView.Entry entry(DatedMass mass) {
    return new WeekView.Entry(
        "/masses/" + mass.id().value(),
        DayWords.ribbon(mass.colour()),
        Speech.clock(mass.start()),
        MassWords.celebrant(mass),
        MassWords.tight(mass, locale),
        MassWords.companyInFigures(mass),
        marks(mass));
  }

  private List<WeekView.Mark> marks(DatedMass mass) {
    List<WeekView.Mark> marks = new ArrayList<>();
    for (int i = 0; i < clashes.size(); i++) {
      Clash clash = clashes.get(i);
      if (clash.concerns(mass)) {
        marks.add(new WeekView.Mark(clash.severity().mark(), clash.words().tight(), i + 1));
      }
    }
    return marks;
  }

  private List<WeekView.Note> notes() {
    return IntStream.range(0, clashes.size())
        .mapToObj(
            i -> {
              Clash clash = clashes.get(i);
              return new WeekView.Note(
                  i + 1,
                  clash.severity().mark(),
                  clash.words().about(),
                  clash.words().inShort(),
                  new Link(say("See why"), clash.address()),
                  clash.mends());
            })
        .toList();
  }

  private List<WeekView.Ahead> ahead() {
    return later.stream()
        .map(
            c ->
                new WeekView.Ahead(
                    c.severity().mark(),
                    c.words().about(),
                    c.words().title(),
                    new Link(say("See why"), c.address())))
        .toList();
  }
}
