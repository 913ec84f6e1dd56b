package vestiary.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Map;
import vestiary.calendar.Colour;
import vestiary.calendar.Day;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.Season;
import vestiary.cluster.ChurchCalendars;
import vestiary.cluster.Cluster;
import vestiary.cluster.OpenCluster;
import vestiary.cluster.ReadCluster;
import vestiary.pool.PutInCare;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.schedule.ClearSchedule;

/**
 * The invented cluster, brought in through the lists that users send, for the fortnight that begins
 * with the present week.
 */
@ApplicationScoped
public class Demo {

  /** The demo is about two weeks; once the first is over, moving it is worth offering. */
  private static final int DAYS = 14;

  private static final List<ImportWhat> LASTING =
      List.of(
          ImportWhat.CLUSTER,
          ImportWhat.CHURCHES,
          ImportWhat.PROPERS,
          ImportWhat.JOURNEYS,
          ImportWhat.PEOPLE,
          ImportWhat.PATTERNS,
          ImportWhat.PIECES);

  private static final List<ImportWhat> DATED = List.of(ImportWhat.MASSES, ImportWhat.CARE);

  private final ImportCsv imports;
  private final ReadCluster cluster;
  private final OpenCluster open;
  private final ChurchCalendars calendars;
  private final ClearSchedule schedule;
  private final PutInCare care;
  private final Clock clock;

  Demo(
      ImportCsv imports,
      ReadCluster cluster,
      OpenCluster open,
      ChurchCalendars calendars,
      ClearSchedule schedule,
      PutInCare care,
      Clock clock) {
    this.imports = imports;
    this.cluster = cluster;
    this.open = open;
    this.calendars = calendars;
    this.schedule = schedule;
    this.care = care;
    this.clock = clock;
  }

  /** Fills an empty cluster with the demo. */
  @Transactional
  public void load() {
    LASTING.forEach(what -> bringIn(what, DateWords.ISO));
    loadDated();
  }

  /**
   * Moves the demo to the present week: its Masses are made anew as the lists have them, with
   * whatever was changed by hand forgotten.
   *
   * @throws Refused if this is no demo cluster, or its lists name what is no longer there
   */
  @Transactional
  public void moveToPresentWeek() {
    if (cluster.findDemoMonday().isEmpty()) {
      throw new Refused(new Refusal.NotThere("demo", cluster.cluster().name()));
    }
    care.forgetAll();
    schedule.clear();
    bringIn(ImportWhat.PATTERNS, DateWords.ISO);
    loadDated();
  }

  /** Whether the fortnight that the demo was made for lies behind us. */
  public boolean isPast() {
    return cluster
        .findDemoMonday()
        .filter(monday -> !today().isBefore(monday.plusDays(DAYS)))
        .isPresent();
  }

  private void loadDated() {
    LocalDate monday = today().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    Cluster here = cluster.cluster();
    FortnightWords words = new FortnightWords(monday, (day, church) -> lawfulOn(here, day, church));
    DATED.forEach(what -> bringIn(what, words));
    open.keepDemoMonday(monday);
  }

  /** None where the evening is not the day's own, or where the Triduum leaves no choice. */
  private List<Colour> lawfulOn(Cluster here, LocalDate date, String church) {
    LiturgicalCalendar calendar = calendars.of(here, cluster.getChurch(church));
    Day day = calendar.day(date);
    boolean closed =
        day.season() == Season.TRIDUUM || calendar.day(date.plusDays(1)).season() == Season.TRIDUUM;
    boolean rose = day.kept().colours().contains(Colour.ROSE);
    return !rose && (closed || day.evening().tomorrow()) ? List.of() : day.kept().colours();
  }

  private LocalDate today() {
    return LocalDate.now(clock.withZone(cluster.cluster().zone()));
  }

  private void bringIn(ImportWhat what, DateWords words) {
    ImportCsv.Outcome outcome = imports.bringIn(what, file(what), words, false);
    if (!outcome.done()) {
      throw new Refused(noLongerFits(what, outcome.bad().get(0)));
    }
  }

  /** Somebody who tries things out may have renamed or removed what the lists name. */
  private static Refusal noLongerFits(ImportWhat what, BadLine bad) {
    return new Refusal.BadLines(
        "The demo’s list of %s names what is no longer here (line %d: %s) Put that back, and the demo can be moved."
            .formatted(what.id(), bad.line(), bad.reason()),
        Map.of("bad", List.of(bad)));
  }

  /** The demo's own list, as the program carries it. */
  static byte[] file(ImportWhat what) {
    String name = "/demo-data/" + what.id() + ".csv";
    try (InputStream file = Demo.class.getResourceAsStream(name)) {
      if (file == null) {
        throw new IllegalStateException("the program lacks " + name);
      }
      return file.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
