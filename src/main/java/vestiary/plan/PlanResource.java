package vestiary.plan;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Duration;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.planning.CheckClashes;
import vestiary.planning.SpanToCheck;
import vestiary.pool.ReadTaken;
import vestiary.problem.Asked;

/** Plans: asked for, looked at, cancelled, applied, undone. */
@Path("/api/plans")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.PLAN)
class PlanResource {

  private static final int LONGEST_WAIT_SECONDS = 30;

  private final PlanSpan span;
  private final ReadPlan plans;
  private final CancelPlan cancel;
  private final ApplyPlan apply;
  private final CheckClashes check;
  private final ReadTaken taken;

  PlanResource(
      PlanSpan span,
      ReadPlan plans,
      CancelPlan cancel,
      ApplyPlan apply,
      CheckClashes check,
      ReadTaken taken) {
    this.span = span;
    this.plans = plans;
    this.cancel = cancel;
    this.apply = apply;
    this.check = check;
    this.taken = taken;
  }

  /** The id of a plan that is being worked out. */
  record Accepted(String id) {}

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  public Response ask(PlanSpan.Request request) {
    String id = span.ask(Asked.body(request));
    return Response.accepted(new Accepted(id)).location(URI.create("/api/plans/" + id)).build();
  }

  /**
   * One plan.
   *
   * @param wait so many seconds at most until it is over; 0 for how it is now
   */
  @GET
  @Path("/{id}")
  public PlanBody one(@RestPath String id, @QueryParam("wait") @DefaultValue("") String wait) {
    Asked asked = new Asked();
    int seconds = asked.whole("wait", asked.number("wait", wait), 0, LONGEST_WAIT_SECONDS, 0);
    asked.refuseIfFaulty();
    return body(plans.await(id, Duration.ofSeconds(seconds)));
  }

  @DELETE
  @Path("/{id}")
  public void cancel(@RestPath String id) {
    cancel.cancel(id);
  }

  @POST
  @Path("/{id}/apply")
  public PlanBody apply(@RestPath String id) {
    apply.apply(id);
    return body(plans.get(id));
  }

  @DELETE
  @Path("/{id}/apply")
  public PlanBody undo(@RestPath String id) {
    apply.undo(id);
    return body(plans.get(id));
  }

  private PlanBody body(PlanFound plan) {
    SpanToCheck loaded = check.load(plan.first(), plan.last());
    PlannedDays days = PlannedDays.of(loaded);
    return PlanBody.of(plan, loaded, taken.carriedBetween(days.from(), days.until()));
  }
}
