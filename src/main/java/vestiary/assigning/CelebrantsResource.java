package vestiary.assigning;

import static vestiary.web.Speech.say;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.people.FindPeople;
import vestiary.problem.Asked;
import vestiary.vesting.MassId;

/** Who could celebrate what, proposals, and naming celebrants, for programs. */
@Path("/api/celebrants")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.ENTER_MASSES)
class CelebrantsResource {

  private static final int MOST_AT_ONCE = 1_000;

  private final ProposeCelebrants propose;
  private final AdviseOnMass advise;
  private final AssignCelebrants assign;
  private final FindPeople people;

  CelebrantsResource(
      ProposeCelebrants propose, AdviseOnMass advise, AssignCelebrants assign, FindPeople people) {
    this.propose = propose;
    this.advise = advise;
    this.assign = assign;
    this.people = people;
  }

  /** One Mass and the short name of its celebrant; {@code expected}: who is named now, or none. */
  record Named(String mass, String celebrant, String expected) {}

  /**
   * Several, all of them or none.
   *
   * @param inPlace whether those named until now still count as asked for; left out: no
   */
  record Request(List<Named> assignments, Boolean inPlace) {}

  /** The id under which it can be undone. */
  record Accepted(String id) {}

  /** A proposal for the Masses ahead on some dates; nothing is changed. */
  @GET
  public ProposalBody proposal(
      @QueryParam("from") String from,
      @QueryParam("to") String to,
      @QueryParam("without") String without) {
    Dates dates = Dates.parse(from, to);
    return ProposalBody.of(
        without == null || without.isBlank()
            ? propose.propose(dates.first(), dates.last())
            : propose.proposeWithout(people.get(without).id(), dates.first(), dates.last()));
  }

  /** Who could celebrate a Mass, and why the others cannot. */
  @GET
  @Path("/masses/{id}")
  public AdviceBody advice(@RestPath String id) {
    return AdviceBody.of(advise.of(id));
  }

  @POST
  @Path("/assignments")
  @Consumes(MediaType.APPLICATION_JSON)
  public Response assign(Request request) {
    Asked asked = new Asked();
    List<Named> named =
        Asked.body(request).assignments() == null ? List.of() : request.assignments();
    if (named.isEmpty() || named.size() > MOST_AT_ONCE || named.contains(null)) {
      asked.fault("assignments", say("Name from 1 to %d Masses at once.", MOST_AT_ONCE));
    }
    asked.refuseIfFaulty();
    List<AssignCelebrants.Wanted> wanted = new ArrayList<>();
    for (Named one : named) {
      String mass = asked.needed("mass", one.mass(), 40);
      String celebrant = asked.needed("celebrant", one.celebrant(), 200);
      String expected = asked.text("expected", one.expected());
      asked.refuseIfFaulty();
      wanted.add(
          new AssignCelebrants.Wanted(
              new MassId(Asked.id("Mass", mass)),
              expected.isEmpty() ? List.of() : List.of(people.get(expected).id()),
              people.get(celebrant).id()));
    }
    UUID id = assign.assign(wanted, Boolean.TRUE.equals(request.inPlace()));
    return Response.created(URI.create("/api/celebrants/assignments/" + id))
        .entity(new Accepted(id.toString()))
        .build();
  }

  /** Puts back what was before. */
  @DELETE
  @Path("/assignments/{id}")
  public void undo(@RestPath String id) {
    assign.undo(id);
  }
}
