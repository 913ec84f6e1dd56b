package vestiary.ordo;

import static vestiary.web.Speech.say;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import vestiary.calendar.Day;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.cluster.Church;
import vestiary.web.DayWords;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out an ordo month by month. */
final class OrdoSheet {

  /**
   * A month with no more days than these at an end of the year shares a page with its neighbour.
   */
  private static final int FEW_DAYS = 4;

  private final Ordo ordo;
  private final Paper paper;
  private final LocalDate today;
  private final OrdoAddress address;
  private final DayLines lines;
  private final DayNotes notes;

  OrdoSheet(Ordo ordo, Paper paper, LocalDate today) {
    this.ordo = ordo;
    this.paper = paper;
    this.today = today;
    this.address = OrdoAddress.of(ordo, paper);
    this.lines = new DayLines(ordo);
    this.notes = new DayNotes(ordo);
  }

  /** The anchor of a day, to be used on its page. */
  static String anchor(LocalDate date) {
    return "day-" + date;
  }

  OrdoView view(Frame frame) {
    OrdoFront front = new OrdoFront(ordo);
    List<Day> days = ordo.days().all();
    return new OrdoView(
        frame,
        ordo.findChurch().map(OrdoNames::church).orElse(ordo.cluster().name()),
        ordo.findChurch().isPresent(),
        say("The liturgical year %d", ordo.year().number()),
        DayWords.cycles(days.get(1), days.get(0)),
        Speech.span(ordo.year().first(), ordo.year().last()),
        calendar(),
        paper.id(),
        turn(),
        papers(),
        churches(),
        front.movable(),
        front.holy(),
        front.rose(),
        front.own(),
        months(days));
  }

  private String calendar() {
    String id = ordo.cluster().calendar().calendar();
    return LiturgicalCalendar.offered().stream()
        .filter(o -> o.id().equals(id))
        .findFirst()
        .map(o -> o.name().in(Speech.localeOr(Locale.ENGLISH)))
        .orElseThrow();
  }

  private List<Link> turn() {
    List<Link> links = new ArrayList<>();
    ordo.year()
        .findBefore()
        .ifPresent(y -> links.add(new Link("← " + y.number(), address.with(y).page())));
    ordo.year()
        .findAfter()
        .ifPresent(y -> links.add(new Link(y.number() + " →", address.with(y).page())));
    if (ordo.year().holds(today)) {
      links.add(new Link(say("Today"), "#" + anchor(today)));
    }
    links.add(new Link(say("Calendar file"), address.file("ics")));
    links.add(new Link(say("Table"), address.file("csv")));
    return links;
  }

  private List<OrdoView.Option> papers() {
    return List.of(
        paper(say("Sheets of A4, a month each"), Paper.A4),
        paper(say("Booklet of A5 pages"), Paper.A5));
  }

  private OrdoView.Option paper(String words, Paper other) {
    return new OrdoView.Option(new Link(words, address.with(other).page()), other == paper);
  }

  private List<OrdoView.Option> churches() {
    if (ordo.churches().isEmpty()) return List.of();
    List<OrdoView.Option> options = new ArrayList<>();
    options.add(church(say("All churches"), "", ordo.of().isEmpty()));
    for (Church church : ordo.churches()) {
      options.add(church(OrdoNames.church(church), church.slug(), ordo.of().contains(church)));
    }
    return options;
  }

  private OrdoView.Option church(String words, String slug, boolean chosen) {
    return new OrdoView.Option(new Link(words, address.with(slug).page()), chosen);
  }

  private List<OrdoView.Month> months(List<Day> days) {
    Map<YearMonth, List<Day>> byMonth =
        days.stream()
            .collect(
                Collectors.groupingBy(
                    d -> YearMonth.from(d.date()), TreeMap::new, Collectors.toList()));
    return byMonth.values().stream().map(this::month).toList();
  }

  private OrdoView.Month month(List<Day> days) {
    String name = Speech.sentence(Speech.monthAndYear(days.get(0).date()));
    return new OrdoView.Month(
        name.toLowerCase(Locale.ROOT).replace(' ', '-'),
        name,
        days.size() <= FEW_DAYS,
        days.stream().map(this::day).toList());
  }

  private OrdoView.Day day(Day day) {
    LocalDate date = day.date();
    boolean isSunday = date.getDayOfWeek() == DayOfWeek.SUNDAY;
    String weekday = Speech.sentence(Speech.weekday(date));
    String number = String.valueOf(date.getDayOfMonth());
    return new OrdoView.Day(
        anchor(date),
        number,
        weekday.substring(0, 1),
        weekday + " " + number,
        "/day/" + date,
        isSunday || day.obligation(),
        date.equals(today),
        lines.of(day),
        isSunday ? DayWords.season(day) : "",
        DayNotes.duty(day),
        notes.of(day));
  }
}
