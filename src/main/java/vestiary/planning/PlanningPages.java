package vestiary.planning;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.cluster.ChurchCalendars;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.schedule.PlanFit;
import vestiary.schedule.ReadMasses;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** The week, the day and what clashes, as people read them. */
@Path("/")
@Produces(MediaType.TEXT_HTML)
class PlanningPages {

  /** Said where a press elsewhere ends at the week. */
  private static final Map<String, String> DONE =
      Map.of(
          "device",
          word(
              "This phone or computer now stays signed in for its church, and you are signed out on it. Whoever changes something here is asked for a name or a code."));

  private static final int FORTNIGHT = 14;
  private static final int LONGEST_LIST_DAYS = 100;

  private final CheckClashes check;
  private final ReadMasses masses;
  private final ReadCluster cluster;
  private final ChurchCalendars calendars;
  private final PlanFit fit;
  private final Frames frames;
  private final DayNotices notices;
  private final Clock clock;

  PlanningPages(
      CheckClashes check,
      ReadMasses masses,
      ReadCluster cluster,
      ChurchCalendars calendars,
      PlanFit fit,
      Frames frames,
      DayNotices notices,
      Clock clock) {
    this.check = check;
    this.masses = masses;
    this.cluster = cluster;
    this.calendars = calendars;
    this.fit = fit;
    this.frames = frames;
    this.notices = notices;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "planning")
  static class Templates {
    private Templates() {}

    static native TemplateInstance week(WeekView view);

    static native TemplateInstance day(DayView view);

    static native TemplateInstance clashes(ClashesView view);
  }

  @GET
  @Transactional
  @Path("/week")
  public TemplateInstance thisWeek(
      @QueryParam("church") List<String> churches,
      @QueryParam("done") @DefaultValue("") String done) {
    return week(today(), churches, say(DONE.getOrDefault(done, "")));
  }

  @GET
  @Transactional
  @Path("/week/{date}")
  public TemplateInstance week(@RestPath String date, @QueryParam("church") List<String> churches) {
    return week(date("week", date), churches, "");
  }

  @GET
  @Transactional
  @Path("/day")
  public TemplateInstance thisDay() {
    return day(today());
  }

  @GET
  @Transactional
  @Path("/day/{date}")
  public TemplateInstance day(@RestPath String date) {
    return day(date("day", date));
  }

  @GET
  @Transactional
  @Path("/clashes")
  public TemplateInstance clashes(@QueryParam("from") String from, @QueryParam("to") String to) {
    LocalDate monday = WeekSheet.monday(today());
    LocalDate first = given(from, monday);
    LocalDate last = given(to, first.plusDays(FORTNIGHT - 1L));
    if (last.isBefore(first) || first.plusDays(LONGEST_LIST_DAYS).isBefore(last)) {
      last = first.plusDays(FORTNIGHT - 1L);
    }
    return Templates.clashes(list(first, last));
  }

  private TemplateInstance week(LocalDate date, List<String> churches, String done) {
    LocalDate monday = WeekSheet.monday(date);
    SpanToCheck span = check.load(monday, monday.plusDays(2L * WeekSheet.DAYS - 1));
    return Templates.week(
        new WeekSheet(
                span,
                masses.departing(monday, monday.plusDays(WeekSheet.DAYS - 1L)),
                check.in(span),
                calendars,
                churches == null ? List.of() : churches)
            .view(
                frames.of("week", "/week/" + monday),
                done,
                fit.within(monday, monday.plusDays(WeekSheet.DAYS - 1L))));
  }

  private TemplateInstance day(LocalDate date) {
    SpanToCheck span = check.load(date, date);
    return Templates.day(
        new DaySheet(
                span,
                masses.departing(date, date),
                check.in(span),
                calendars,
                notices.of(span.asked()))
            .view(frames.of("day", "/day/" + date)));
  }

  private ClashesView list(LocalDate first, LocalDate last) {
    List<Clash> found = check.between(first, last);
    Map<LocalDate, List<Clash>> byDay =
        found.stream()
            .collect(
                Collectors.groupingBy(c -> c.first().date(), TreeMap::new, Collectors.toList()));
    return new ClashesView(
        frames.of("clashes", "/clashes"),
        Speech.span(first, last),
        first.toString(),
        last.toString(),
        List.of(new Link(say("The week"), "/week/" + WeekSheet.monday(first))),
        StandingWords.of("", found),
        byDay.entrySet().stream()
            .map(
                e ->
                    new ClashesView.Day(
                        Speech.day(e.getKey()), e.getValue().stream().map(this::item).toList()))
            .toList());
  }

  private ClashesView.Item item(Clash clash) {
    return new ClashesView.Item(
        clash.severity().mark(),
        Speech.clock(clash.first().start()),
        clash.masses().stream()
            .map(m -> m.church().name())
            .distinct()
            .collect(Collectors.joining(", ")),
        clash.words().title(),
        (clash.words().more() + " " + clash.words().lawful()).strip(),
        clash.address());
  }

  private LocalDate today() {
    return LocalDate.now(clock.withZone(cluster.cluster().zone()));
  }

  private static LocalDate given(String text, LocalDate otherwise) {
    return text == null || text.isBlank() ? otherwise : date("day", text);
  }

  private static LocalDate date(String what, String text) {
    try {
      LocalDate date = LocalDate.parse(text);
      if (!date.isBefore(LiturgicalCalendar.FIRST.plusDays(14))
          && !date.isAfter(LiturgicalCalendar.LAST.minusDays(14))) {
        return date;
      }
    } catch (DateTimeException e) {
      // Told below like a date that the calendar does not reach.
    }
    throw new Refused(new Refusal.NotThere(what, text));
  }
}
