package vestiary.plan;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.planning.CheckClashes;
import vestiary.planning.SpanToCheck;
import vestiary.pool.ReadTaken;
import vestiary.problem.Asked;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Frames;
import vestiary.web.PageAnswer;

/** One press for the plan of a week; its page; one press to apply it, and one to undo that. */
@Path("/plans")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.PLAN)
class PlanPage {

  /** A week of a few churches is there by then, so that nobody sees a page that only waits. */
  private static final Duration PATIENCE = Duration.ofSeconds(2);

  private final PlanSpan span;
  private final ReadPlan plans;
  private final CancelPlan cancel;
  private final ApplyPlan apply;
  private final CheckClashes check;
  private final ReadTaken taken;
  private final FitOfPlans fit;
  private final Frames frames;

  PlanPage(
      PlanSpan span,
      ReadPlan plans,
      CancelPlan cancel,
      ApplyPlan apply,
      CheckClashes check,
      ReadTaken taken,
      FitOfPlans fit,
      Frames frames) {
    this.span = span;
    this.plans = plans;
    this.cancel = cancel;
    this.apply = apply;
    this.check = check;
    this.taken = taken;
    this.fit = fit;
    this.frames = frames;
  }

  @CheckedTemplate(basePath = "plan")
  static class Templates {
    private Templates() {}

    static native TemplateInstance plan(PlanView view);
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response ask(
      @FormParam("from") String from, @FormParam("to") String to, @FormParam("keep") String keep) {
    String id = span.ask(new PlanSpan.Request(from, to, "true".equals(keep)));
    plans.await(id, PATIENCE);
    return to(id);
  }

  @GET
  @Transactional
  @Path("/{id}")
  public TemplateInstance one(@RestPath String id) {
    return page(id, "");
  }

  /** Leads to the plan that holds for the week in which a date lies. */
  @GET
  @Transactional
  @Path("/of/{date}")
  public Response ofWeek(@RestPath String date) {
    Asked asked = new Asked();
    LocalDate day = asked.date("date", date);
    asked.refuseIfFaulty();
    LocalDate monday = day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    return plans
        .findApplied(monday, monday.plusDays(6))
        .map(plan -> to(plan.id()))
        .orElseThrow(() -> new Refused(new Refusal.NotThere("plan of the week", date)));
  }

  @POST
  @Path("/{id}/apply")
  public Response apply(@RestPath String id) {
    return press(id, () -> apply.apply(id));
  }

  @POST
  @Path("/{id}/undo")
  public Response undo(@RestPath String id) {
    return press(id, () -> apply.undo(id));
  }

  @POST
  @Path("/{id}/cancel")
  public Response cancel(@RestPath String id) {
    cancel.cancel(id);
    plans.await(id, PATIENCE);
    return to(id);
  }

  private Response press(String id, Runnable deed) {
    return FormAnswer.of(
        () -> {
          deed.run();
          return to(id);
        },
        refusal -> PageAnswer.of(refusal.status(), page(id, refusal.detail())));
  }

  private static Response to(String id) {
    return PageAnswer.seeOther("/plans/" + id);
  }

  private TemplateInstance page(String id, String problem) {
    PlanFound plan = plans.get(id);
    SpanToCheck loaded = check.load(plan.first(), plan.last());
    PlannedDays days = PlannedDays.of(loaded);
    return Templates.plan(
        new PlanSheet(
                plan,
                loaded,
                check.in(loaded),
                taken.carriedBetween(days.from(), days.until()),
                plan.applied() ? fit.find(plan, loaded).stream().toList() : List.of())
            .view(frames.of("week", "/plans/" + id), problem));
  }
}
