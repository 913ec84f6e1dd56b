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
import vestiary.access.Clusters;
import vestiary.access.CurrentCluster;
import vestiary.access.DefaultCluster;
import vestiary.calendar.Colour;
import vestiary.calendar.Day;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.Season;
import vestiary.cluster.ChurchCalendars;
import vestiary.cluster.Cluster;
import vestiary.cluster.OpenCluster;
import vestiary.cluster.ReadCluster;
import vestiary.lending.AnswerOffer;
import vestiary.lending.OfferPieces;
import vestiary.people.SaveAbsence;
import vestiary.pool.PutInCare;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.schedule.ClearSchedule;
import vestiary.sending.BringSent;
import vestiary.times.PublishTimes;

/**
 * The invented clusters, brought in through the lists that users send, for the fortnight that
 * begins with the present week: a large one, and a small one beside it that lends to it.
 */
@ApplicationScoped
public class Demo {

  /** The demo is about two weeks; once the first is over, moving it is worth offering. */
  private static final int DAYS = 14;

  /** Of which Mass times stand at the door. */
  private static final int WEEKS_FOR_THE_PEOPLE = 4;

  private static final List<ImportWhat> LASTING =
      List.of(
          ImportWhat.CLUSTER,
          ImportWhat.CHURCHES,
          ImportWhat.PROPERS,
          ImportWhat.JOURNEYS,
          ImportWhat.PEOPLE,
          ImportWhat.PATTERNS,
          ImportWhat.PIECES);

  private static final List<ImportWhat> DATED =
      List.of(ImportWhat.MASSES, ImportWhat.ABSENCES, ImportWhat.CARE, ImportWhat.OUT);

  private static final String LISTS = "/demo-data/";
  private static final String LISTS_OF_SECOND = LISTS + "ashmere-coast/";

  /** What the second offers to the first, which lacks white dalmatics. */
  private static final String OFFERED_TO = "wenlow-valley";

  private static final String OFFERED = "SS-D1";

  private final ImportCsv imports;
  private final ReadCluster cluster;
  private final OpenCluster open;
  private final ChurchCalendars calendars;
  private final ClearSchedule schedule;
  private final PutInCare care;
  private final SaveAbsence absences;
  private final BringSent out;
  private final OfferPieces offer;
  private final AnswerOffer lendings;
  private final PublishTimes times;
  private final Clusters clusters;
  private final CurrentCluster current;
  private final DefaultCluster first;
  private final Clock clock;

  Demo(
      ImportCsv imports,
      ReadCluster cluster,
      OpenCluster open,
      ChurchCalendars calendars,
      ClearSchedule schedule,
      PutInCare care,
      SaveAbsence absences,
      BringSent out,
      OfferPieces offer,
      AnswerOffer lendings,
      PublishTimes times,
      Clusters clusters,
      CurrentCluster current,
      DefaultCluster first,
      Clock clock) {
    this.imports = imports;
    this.cluster = cluster;
    this.open = open;
    this.calendars = calendars;
    this.schedule = schedule;
    this.care = care;
    this.absences = absences;
    this.out = out;
    this.offer = offer;
    this.lendings = lendings;
    this.times = times;
    this.clusters = clusters;
    this.current = current;
    this.first = first;
    this.clock = clock;
  }

  /** Fills an empty cluster with the large one. */
  @Transactional
  public void load() {
    LASTING.forEach(what -> bringIn(what, LISTS, words()));
    loadDated(LISTS);
  }

  /** Fills an empty cluster with the small one, once the large one is there. */
  @Transactional
  public void loadSecond() {
    LASTING.stream()
        .filter(what -> isThere(what, LISTS_OF_SECOND))
        .forEach(what -> bringIn(what, LISTS_OF_SECOND, words()));
    loadDated(LISTS_OF_SECOND);
    offerForFortnight();
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
    lendings.endAll();
    out.forgetAll();
    care.forgetAll();
    absences.forgetAll();
    schedule.clear();
    boolean isFirst = current.id().equals(first.id());
    String lists = isFirst ? LISTS : LISTS_OF_SECOND;
    bringIn(ImportWhat.PATTERNS, lists, DateWords.ISO);
    loadDated(lists);
    if (!isFirst && clusters.find(OFFERED_TO).isPresent()) {
      offerForFortnight();
    }
  }

  /** Whether the fortnight that the demo was made for lies behind us. */
  public boolean isPast() {
    return cluster
        .findDemoMonday()
        .filter(monday -> !today().isBefore(monday.plusDays(DAYS)))
        .isPresent();
  }

  private void loadDated(String lists) {
    FortnightWords words = words();
    DATED.stream()
        .filter(what -> isThere(what, lists))
        .forEach(what -> bringIn(what, lists, words));
    open.keepDemoMonday(monday());
    times.publish(WEEKS_FOR_THE_PEOPLE);
  }

  private FortnightWords words() {
    Cluster here = cluster.cluster();
    return new FortnightWords(monday(), (day, church) -> lawfulOn(here, day, church));
  }

  private void offerForFortnight() {
    LocalDate monday = monday();
    offer.offer(
        new OfferPieces.Request(
            OFFERED_TO,
            monday.toString(),
            monday.plusDays(DAYS - 1L).toString(),
            List.of(OFFERED),
            false,
            "We have no deacon at present. Gideon Marram hands it over on weekdays from nine."));
  }

  private LocalDate monday() {
    return today().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
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

  private void bringIn(ImportWhat what, String lists, DateWords words) {
    ImportCsv.Outcome outcome = imports.bringIn(what, file(what, lists), words, false);
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

  /** The small one has no lists of some kinds. */
  private static boolean isThere(ImportWhat what, String lists) {
    return Demo.class.getResource(name(what, lists)) != null;
  }

  private static String name(ImportWhat what, String lists) {
    return lists + what.id() + ".csv";
  }

  /** The large one's list, as the program carries it. */
  static byte[] file(ImportWhat what) {
    return file(what, LISTS);
  }

  private static byte[] file(ImportWhat what, String lists) {
    String name = name(what, lists);
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
