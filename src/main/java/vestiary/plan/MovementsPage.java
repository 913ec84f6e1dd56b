package vestiary.plan;

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
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import vestiary.cluster.ReadCluster;
import vestiary.pool.ReadPool;
import vestiary.problem.Asked;
import vestiary.web.English;
import vestiary.web.Frames;
import vestiary.web.Link;

/** The list for those who drive: who takes what where, and when; and what is to go home. */
@Path("/movements")
@Produces(MediaType.TEXT_HTML)
class MovementsPage {

  private static final int DAYS = 7;

  private final ReadMovements movements;
  private final ReadResting resting;
  private final ReadPool pool;
  private final ReadCluster cluster;
  private final Frames frames;
  private final Clock clock;

  MovementsPage(
      ReadMovements movements,
      ReadResting resting,
      ReadPool pool,
      ReadCluster cluster,
      Frames frames,
      Clock clock) {
    this.movements = movements;
    this.resting = resting;
    this.pool = pool;
    this.cluster = cluster;
    this.frames = frames;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "plan")
  static class Templates {
    private Templates() {}

    static native TemplateInstance movements(MovementsView view);
  }

  @GET
  @Transactional
  public TemplateInstance week(@QueryParam("week") @DefaultValue("") String week) {
    Asked asked = new Asked();
    LocalDate day =
        asked
            .findDate("week", week)
            .orElseGet(() -> LocalDate.now(clock.withZone(cluster.cluster().zone())));
    asked.refuseIfFaulty();
    LocalDate monday = day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    LocalDate sunday = monday.plusDays(DAYS - 1L);
    ReadMovements.Journeys found = movements.between(monday, sunday);
    TripWords words = words(found, monday);
    return Templates.movements(
        new MovementsView(
            frames.of("week", "/movements?week=" + monday),
            English.span(monday, sunday),
            List.of(
                new Link("← " + English.date(monday.minusWeeks(1)), to(monday.minusWeeks(1))),
                new Link(English.date(monday.plusWeeks(1)) + " →", to(monday.plusWeeks(1))),
                new Link("The week", "/week/" + monday)),
            lead(found.trips()),
            drivers(found.trips(), words),
            resting.views(sunday)));
  }

  private static String to(LocalDate monday) {
    return "/movements?week=" + monday;
  }

  private static String lead(List<PlanResult.Trip> trips) {
    if (trips.isEmpty()) {
      return "Nothing is carried this week. Plan the week, and what has to be carried stands here.";
    }
    long own = trips.stream().filter(trip -> trip.carrier().isEmpty()).count();
    return "%s; %s made for vestments alone."
        .formatted(
            English.sentence(English.count(trips.size(), "journey")),
            English.count((int) own) + (own == 1 ? " is" : " are"));
  }

  private TripWords words(ReadMovements.Journeys found, LocalDate monday) {
    return new TripWords(
        List.copyOf(found.churches().values()),
        pool.pieces(monday.atStartOfDay(found.cluster().zone()).toInstant()),
        found.cluster().zone());
  }

  private static List<MovementsView.Driver> drivers(List<PlanResult.Trip> trips, TripWords words) {
    Map<String, List<PlanResult.Trip>> byDriver =
        trips.stream()
            .collect(
                Collectors.groupingBy(PlanResult.Trip::carrier, TreeMap::new, Collectors.toList()));
    return byDriver.entrySet().stream()
        .map(
            driver ->
                new MovementsView.Driver(
                    driver.getKey().isEmpty() ? "Somebody is to be asked" : driver.getKey(),
                    driver.getValue().stream()
                        .sorted(Comparator.comparing(PlanResult.Trip::leaveBy))
                        .map(words::view)
                        .toList()))
        .toList();
  }
}
