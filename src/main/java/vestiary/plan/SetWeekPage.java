package vestiary.plan;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.Comparator;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.planning.CheckClashes;
import vestiary.planning.SpanToCheck;
import vestiary.pool.PooledPiece;
import vestiary.pool.ReadTaken;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Frames;

/** The week of one set across the churches, as a picture. */
@Path("/vestments/sets/{code}/week/{date}")
@Produces(MediaType.TEXT_HTML)
class SetWeekPage {

  private final CheckClashes check;
  private final ReadTaken taken;
  private final Frames frames;

  SetWeekPage(CheckClashes check, ReadTaken taken, Frames frames) {
    this.check = check;
    this.taken = taken;
    this.frames = frames;
  }

  @CheckedTemplate(basePath = "plan")
  static class Templates {
    private Templates() {}

    static native TemplateInstance set(SetWeekView view);
  }

  @GET
  @Transactional
  public TemplateInstance week(@RestPath String code, @RestPath String date) {
    Asked asked = new Asked();
    LocalDate day = asked.date("date", date);
    asked.refuseIfFaulty();
    LocalDate monday = day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    SpanToCheck span = check.load(monday, monday.plusDays(SetWeekSheet.DAYS - 1L));
    List<PooledPiece> pieces =
        span.pieces().stream()
            .filter(piece -> piece.set().equalsIgnoreCase(code))
            .sorted(Comparator.comparing(PooledPiece::kind).thenComparing(PooledPiece::code))
            .toList();
    if (pieces.isEmpty()) {
      throw new Refused(new Refusal.NotThere("set", code));
    }
    PlannedDays days = PlannedDays.of(span);
    return Templates.set(
        new SetWeekSheet(span, pieces, taken.carriedBetween(days.from(), days.until()))
            .view(
                frames.of(
                    "vestments",
                    "/vestments/sets/%s/week/%s".formatted(pieces.get(0).set(), monday))));
  }
}
