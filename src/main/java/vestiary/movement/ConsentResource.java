package vestiary.movement;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.pool.Consent;
import vestiary.problem.Asked;

/** Owners who are asked before their pieces go elsewhere. */
@Path("/api/consents")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.PLAN)
class ConsentResource {

  private static final int LONGEST_SPAN_DAYS = 100;
  private static final AnswerForOwner.Request BARE = new AnswerForOwner.Request(null, null);

  private final ReadOwners owners;
  private final AnswerForOwner answer;

  ConsentResource(ReadOwners owners, AnswerForOwner answer) {
    this.owners = owners;
    this.answer = answer;
  }

  /**
   * What one owner is asked for one Mass.
   *
   * @param slug the owner in addresses
   * @param state to-ask, granted or refused
   * @param by who noted the answer; absent while there is none
   * @param version to be sent with an answer
   * @param offered id of the plan that was made after this refusal
   */
  record ConsentBody(
      String mass,
      String church,
      String start,
      String owner,
      String slug,
      List<String> pieces,
      String state,
      String by,
      int version,
      String offered) {}

  @GET
  @Transactional
  public List<ConsentBody> between(@QueryParam("from") String from, @QueryParam("to") String to) {
    Asked asked = new Asked();
    Asked.Span dates = asked.span(from, to, LONGEST_SPAN_DAYS);
    asked.refuseIfFaulty();
    return owners.between(dates.first(), dates.last()).stream()
        .map(one -> body(one, Optional.empty()))
        .toList();
  }

  /** The owner lets them go. */
  @POST
  @Path("/{mass}/{owner}/grant")
  public ConsentBody grant(
      @RestPath String mass, @RestPath String owner, AnswerForOwner.Request request) {
    Optional<UUID> offered = answer.answer(mass, owner, true, given(request));
    return body(owners.get(mass, owner), offered);
  }

  /** The owner keeps them; what that touches is planned anew. */
  @POST
  @Path("/{mass}/{owner}/refuse")
  public ConsentBody refuse(
      @RestPath String mass, @RestPath String owner, AnswerForOwner.Request request) {
    Optional<UUID> offered = answer.answer(mass, owner, false, given(request));
    return body(owners.get(mass, owner), offered);
  }

  private static AnswerForOwner.Request given(AnswerForOwner.Request request) {
    return request == null ? BARE : request;
  }

  private static ConsentBody body(OwnerAsked one, Optional<UUID> offered) {
    return new ConsentBody(
        one.mass().id().value().toString(),
        one.mass().church().slug(),
        one.mass().start().format(DateTimeFormatter.ISO_OFFSET_DATE_TIME),
        one.owner(),
        one.slug(),
        one.pieces(),
        one.state(),
        one.findAnswer().map(Consent::by).orElse(null),
        one.version(),
        offered.map(UUID::toString).orElse(null));
  }
}
