package vestiary.planning;

import static vestiary.web.Speech.say;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import vestiary.allocation.Shortage;
import vestiary.calendar.Celebration;
import vestiary.calendar.Colour;
import vestiary.calendar.Day;
import vestiary.cluster.Church;
import vestiary.cluster.ChurchCalendars;
import vestiary.schedule.DatedMass;
import vestiary.schedule.DepartureWords;
import vestiary.schedule.ServingWords;
import vestiary.vesting.Need;
import vestiary.vesting.Window;
import vestiary.web.DayWords;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.NormWords;
import vestiary.web.Speech;

/** Sets out one day: its celebration and the reason for its colour, then every Mass. */
final class DaySheet {

  private final SpanToCheck span;
  private final List<DatedMass> departing;
  private final List<Clash> clashes;
  private final ChurchCalendars calendars;
  private final Locale locale;
  private final LocalDate date;
  private final Day day;
  private final List<DayNotices.Notice> notices;

  /**
   * A sheet of one day.
   *
   * @param departing Masses of the day that are cancelled, or moved to or from it
   */
  DaySheet(
      SpanToCheck span,
      List<DatedMass> departing,
      List<Clash> clashes,
      ChurchCalendars calendars,
      List<DayNotices.Notice> notices) {
    this.notices = List.copyOf(notices);
    this.span = span;
    this.departing = List.copyOf(departing);
    this.clashes = List.copyOf(clashes);
    this.calendars = calendars;
    this.locale = Speech.localeOr(span.cluster().language());
    this.date = span.first();
    this.day = calendars.plain(span.cluster()).day(date);
  }

  DayView view(Frame frame) {
    return new DayView(
        frame,
        Speech.sentence("%s, %s".formatted(Speech.weekday(date), monthAndYear())),
        String.valueOf(date.getDayOfMonth()),
        Speech.day(date) + " " + date.getYear(),
        DayWords.placeInTheYear(day),
        date.getDayOfWeek() == DayOfWeek.SUNDAY || day.obligation(),
        DayWords.ribbons(day),
        DayWords.celebrated("", day.kept(), locale),
        StandingWords.of(lead(), clashes),
        turn(),
        new Link(say("Add a Mass"), "/masses/new?date=" + date),
        DayPicture.of(rows(), List.of()),
        span.asked().stream().map(this::mass).toList(),
        departing.stream().map(DaySheet::departure).toList(),
        NormWords.of(day.why()),
        reasons(day),
        day.celebrations().stream().skip(1).map(this::other).toList(),
        day.omitted().stream()
            .map(
                o ->
                    new DayView.Omitted(
                        o.name().in(locale),
                        new DayView.Reason(NormWords.of(o.why()), NormWords.source(o.source()))))
            .toList(),
        span.churches().stream().flatMap(this::own).toList(),
        notices);
  }

  private static DayView.Departure departure(DatedMass mass) {
    return new DayView.Departure(
        mass.usual().church().name(),
        DepartureWords.of(mass),
        new Link(say("More"), "/masses/" + mass.id().value()));
  }

  private String monthAndYear() {
    return Speech.monthAndYear(date);
  }

  private List<Link> turn() {
    LocalDate before = date.minusDays(1);
    LocalDate after = date.plusDays(1);
    return List.of(
        new Link("← " + weekdayAndNumber(before), "/day/" + before),
        new Link(weekdayAndNumber(after) + " →", "/day/" + after),
        new Link(say("The week"), "/week/" + WeekSheet.monday(date)),
        new Link(say("Set-out sheets"), "/set-out?from=%s&to=%s".formatted(date, date)));
  }

  private static String weekdayAndNumber(LocalDate date) {
    return Speech.weekday(date) + " " + date.getDayOfMonth();
  }

  private String lead() {
    String colours = Speech.sentence(Speech.colours(DayWords.colours(day)));
    String evening =
        day.evening().tomorrow()
            ? say(
                "; in the evening %s begins",
                calendars.plain(span.cluster()).day(date.plusDays(1)).kept().name().in(locale))
            : "";
    return "%s%s. %s".formatted(colours, evening, MassWords.counted(span.asked()));
  }

  private DayView.Other other(Celebration celebration) {
    return new DayView.Other(
        DayWords.ribbon(celebration.colours().get(0)),
        DayWords.celebrated("", celebration, locale),
        new DayView.Reason(
            NormWords.cited(celebration.colourReason()), NormWords.source(celebration.source())));
  }

  private Stream<DayView.OwnDay> own(Church church) {
    Day here = calendars.of(span.cluster(), church).day(date);
    if (here.kept().isKeptLike(day.kept())) {
      return Stream.empty();
    }
    return Stream.of(
        new DayView.OwnDay(
            church.name(),
            DayWords.ribbon(here.kept().colours().get(0)),
            DayWords.celebrated("", here.kept(), locale),
            NormWords.of(here.why()),
            reasons(here)));
  }

  private static List<DayView.Reason> reasons(Day day) {
    return day.reasons().stream()
        .map(r -> new DayView.Reason(NormWords.of(r.said()), NormWords.source(r.source())))
        .toList();
  }

  private DayView.Mass mass(DatedMass mass) {
    List<Need> needs = span.needs(mass);
    return new DayView.Mass(
        "/masses/" + mass.id().value(),
        Speech.clock(mass.start()),
        needs.isEmpty()
            ? ""
            : say("set out by ") + Speech.clock(local(needs.get(0).window(), Window::setOut)),
        mass.church().name(),
        mass.church().place(),
        DayWords.ribbon(mass.colour()),
        MassWords.whole(mass, locale),
        MassWords.celebrant(mass),
        company(mass),
        Speech.sentence(ServingWords.of(mass)),
        MassWords.needs(needs),
        clashes.stream()
            .filter(c -> c.concerns(mass))
            .map(
                c ->
                    new DayView.Clash(
                        c.severity().mark(),
                        c.words().title() + ".",
                        new Link(say("See why"), c.address()),
                        c.mends()))
            .toList(),
        new DayView.Reason(NormWords.of(mass.option().why()), ""),
        otherChoices(mass));
  }

  private String company(DatedMass mass) {
    String company = MassWords.company(mass);
    String arrivals = ArrivalWords.of(mass, span);
    return arrivals.isEmpty() || company.isEmpty() ? company + arrivals : company + "; " + arrivals;
  }

  /** Lawful colours that were not chosen and would fall short. */
  private String otherChoices(DatedMass mass) {
    if (!mass.isColourOpen()) {
      return "";
    }
    List<String> falling =
        mass.option().colours().stream()
            .filter(c -> c != mass.colour())
            .flatMap(c -> shortIn(mass, c))
            .toList();
    return String.join(" ", falling);
  }

  private Stream<String> shortIn(DatedMass mass, Colour colour) {
    List<DatedMass> others =
        span.masses().stream().map(m -> m.id().equals(mass.id()) ? m.with(colour) : m).toList();
    int missing =
        span.shortages(others).stream()
            .filter(s -> s.masses().contains(mass.id()) && s.colour() == colour)
            .mapToInt(Shortage::missing)
            .max()
            .orElse(0);
    return missing == 0
        ? Stream.empty()
        : Stream.of(
            say(
                "%s would be %s short.",
                Speech.sentence(Speech.colour(colour)), Speech.count(missing)));
  }

  private List<DayPicture.Church> rows() {
    return span.churches().stream()
        .map(
            church ->
                new DayPicture.Church(
                    church.name(),
                    church.place(),
                    span.asked().stream()
                        .filter(m -> m.church().id().equals(church.id()))
                        .map(this::bar)
                        .toList()))
        .filter(row -> !row.masses().isEmpty())
        .toList();
  }

  private DayPicture.Mass bar(DatedMass mass) {
    List<Need> needs = span.needs(mass);
    return new DayPicture.Mass(
        needs.isEmpty()
            ? minutes(mass.start())
            : minutes(local(needs.get(0).window(), Window::setOut)),
        minutes(mass.start()),
        minutes(mass.end()),
        needs.isEmpty()
            ? minutes(mass.end())
            : minutes(local(needs.get(0).window(), Window::cleared)),
        mass.colour(),
        MassWords.tight(mass, locale),
        clashes.stream()
            .filter(c -> c.concerns(mass))
            .limit(1)
            .map(c -> new DayPicture.Said(c.severity().mark(), c.words().tight()))
            .toList());
  }

  private ZonedDateTime local(Window window, Function<Window, Instant> part) {
    return part.apply(window).atZone(span.cluster().zone());
  }

  /** Minutes on the clock since the midnight that began the day; past 1440 after the next. */
  private int minutes(ZonedDateTime time) {
    int days = (int) (time.toLocalDate().toEpochDay() - date.toEpochDay());
    return days * 24 * 60 + time.toLocalTime().toSecondOfDay() / 60;
  }
}
