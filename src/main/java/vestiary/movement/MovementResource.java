package vestiary.movement;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.asking.AnswerAsking;
import vestiary.asking.AskCarrier;
import vestiary.asking.Asking;
import vestiary.cluster.Church;
import vestiary.plan.MovementBody;
import vestiary.plan.PlanResult;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.vesting.ChurchId;

/** What is carried where, by the plans that hold, and who was asked to. */
@Path("/api/movements")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.PLAN)
class MovementResource {

  private static final int LONGEST_SPAN_DAYS = 100;
  private static final AnswerAsking.Request BARE = new AnswerAsking.Request(null, null);

  private final ReadErrands errands;
  private final Carry carry;

  MovementResource(ReadErrands errands, Carry carry) {
    this.errands = errands;
    this.carry = carry;
  }

  @GET
  @Transactional
  public List<MovementBody> between(@QueryParam("from") String from, @QueryParam("to") String to) {
    Asked asked = new Asked();
    Asked.Span dates = asked.span(from, to, LONGEST_SPAN_DAYS);
    asked.refuseIfFaulty();
    ReadErrands.Errands found = errands.between(dates.first(), dates.last());
    return found.errands().stream()
        .map(one -> body(one, found.churches(), found.cluster().zone()))
        .toList();
  }

  @GET
  @Transactional
  @Path("/{id}")
  public MovementBody one(@RestPath String id) {
    ReadErrands.Found found = errands.get(id);
    return found
        .findErrand()
        .map(one -> body(one, found.churches(), found.cluster().zone()))
        .orElseThrow(() -> new Refused(new Refusal.NotThere("journey", id)));
  }

  /** Gives it to a person by name. */
  @POST
  @Path("/{id}/ask")
  @Consumes(MediaType.APPLICATION_JSON)
  public MovementBody ask(@RestPath String id, AskCarrier.Request request) {
    carry.ask(id, Asked.body(request));
    return one(id);
  }

  @POST
  @Path("/{id}/accept")
  @Needs(Action.ANSWER_CARRYING)
  public MovementBody accept(@RestPath String id, AnswerAsking.Request request) {
    carry.accept(id, given(request));
    return one(id);
  }

  /** Says no for whoever was asked; the answer names the plan that is made without him. */
  @POST
  @Path("/{id}/decline")
  @Needs(Action.ANSWER_CARRYING)
  public MovementBody decline(@RestPath String id, AnswerAsking.Request request) {
    carry.decline(id, given(request));
    return one(id);
  }

  /** The pieces are there. */
  @POST
  @Path("/{id}/done")
  @Needs(Action.ANSWER_CARRYING)
  public MovementBody done(@RestPath String id, AnswerAsking.Request request) {
    carry.done(id, given(request));
    return one(id);
  }

  /** Takes the asking back, so that somebody else can be asked. */
  @POST
  @Path("/{id}/withdraw")
  public void withdraw(@RestPath String id, AnswerAsking.Request request) {
    carry.withdraw(id, given(request));
  }

  private static AnswerAsking.Request given(AnswerAsking.Request request) {
    return request == null ? BARE : request;
  }

  private static MovementBody body(Errand one, Map<ChurchId, Church> churches, ZoneId zone) {
    PlanResult.Trip trip = one.trip();
    Asking told = one.findOpen().or(one::findDeclined).orElse(null);
    return new MovementBody(
        trip.id().toString(),
        trip.pieces(),
        churches.get(new ChurchId(trip.from())).slug(),
        churches.get(new ChurchId(trip.to())).slug(),
        trip.ready().stream().map(moment -> local(moment, zone)).findFirst().orElse(null),
        local(trip.leaveBy(), zone),
        local(trip.arriveBy(), zone),
        trip.carrier().isEmpty() ? null : trip.carrier(),
        trip.carrier().isEmpty(),
        trip.onAsking(),
        one.state(),
        told == null ? null : told.name(),
        told == null ? null : told.version(),
        told == null ? null : local(told.changedAt(), zone),
        told == null ? null : told.offered().stream().map(UUID::toString).findFirst().orElse(null));
  }

  private static String local(Instant moment, ZoneId zone) {
    return moment.atZone(zone).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
  }
}
