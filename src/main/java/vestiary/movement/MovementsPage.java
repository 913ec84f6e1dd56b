package vestiary.movement;

import static vestiary.web.Speech.say;

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
import java.util.List;
import vestiary.cluster.ReadCluster;
import vestiary.plan.ReadResting;
import vestiary.pool.ReadPool;
import vestiary.problem.Asked;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/**
 * The list for those who drive: who takes what where, and when; whom to ask; and what is to go
 * home.
 */
@Path("/movements")
@Produces(MediaType.TEXT_HTML)
class MovementsPage {

  private static final int DAYS = 7;

  private final ReadErrands errands;
  private final ReadOwners owners;
  private final ErrandWords asked;
  private final ReadResting resting;
  private final ReadPool pool;
  private final ReadCluster cluster;
  private final Frames frames;
  private final Clock clock;

  MovementsPage(
      ReadErrands errands,
      ReadOwners owners,
      ErrandWords asked,
      ReadResting resting,
      ReadPool pool,
      ReadCluster cluster,
      Frames frames,
      Clock clock) {
    this.errands = errands;
    this.owners = owners;
    this.asked = asked;
    this.resting = resting;
    this.pool = pool;
    this.cluster = cluster;
    this.frames = frames;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "movement")
  static class Templates {
    private Templates() {}

    static native TemplateInstance movements(MovementsView view);
  }

  @GET
  @Transactional
  public TemplateInstance week(@QueryParam("week") @DefaultValue("") String week) {
    Asked given = new Asked();
    LocalDate day =
        given
            .findDate("week", week)
            .orElseGet(() -> LocalDate.now(clock.withZone(cluster.cluster().zone())));
    given.refuseIfFaulty();
    LocalDate monday = day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    LocalDate sunday = monday.plusDays(DAYS - 1L);
    ReadErrands.Errands found = errands.between(monday, sunday);
    MovementsSheet sheet =
        new MovementsSheet(
            found,
            owners.between(monday, sunday),
            pool.pieces(monday.atStartOfDay(found.cluster().zone()).toInstant()),
            asked);
    return Templates.movements(
        new MovementsView(
            frames.of("week", "/movements?week=" + monday),
            Speech.span(monday, sunday),
            List.of(
                new Link("← " + Speech.date(monday.minusWeeks(1)), to(monday.minusWeeks(1))),
                new Link(Speech.date(monday.plusWeeks(1)) + " →", to(monday.plusWeeks(1))),
                new Link(say("The week"), "/week/" + monday)),
            sheet.lead(),
            "/reservations?week=" + monday,
            sheet.drivers(),
            sheet.dropped(),
            sheet.owners(),
            resting.views(sunday)));
  }

  private static String to(LocalDate monday) {
    return "/movements?week=" + monday;
  }
}
