package vestiary.schedule;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;

/** Masses and other liturgies that need vestments. */
@Path("/api/masses")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.ENTER_MASSES)
class MassResource {

  /** A little more than a year, so that a whole liturgical year can be asked for at once. */
  private static final int LONGEST_SPAN_DAYS = 400;

  private final ReadMasses read;
  private final SaveMass save;
  private final ReadCluster cluster;

  MassResource(ReadMasses read, SaveMass save, ReadCluster cluster) {
    this.read = read;
    this.save = save;
    this.cluster = cluster;
  }

  /** Masses of a span; announced ones are those with what was moved out of it or cancelled. */
  @GET
  @Transactional
  public List<MassBody> between(
      @QueryParam("from") String from,
      @QueryParam("to") String to,
      @QueryParam("church") String church,
      @QueryParam("announced") boolean announced) {
    Asked asked = new Asked();
    Asked.Span span = asked.span(from, to, LONGEST_SPAN_DAYS);
    asked.refuseIfFaulty();
    if (church != null && !church.isBlank()) {
      cluster.getChurch(church);
    }
    List<DatedMass> found =
        announced
            ? read.announced(span.first(), span.last())
            : read.between(span.first(), span.last());
    return found.stream()
        .filter(m -> church == null || church.isBlank() || m.church().slug().equals(church))
        .map(MassBody::from)
        .toList();
  }

  @GET
  @Transactional
  @Path("/{id}")
  public MassBody one(@RestPath String id) {
    return MassBody.from(read.get(id));
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  public Response enter(MassBody body) {
    String id = save.enter(Asked.body(body).toRequest());
    return Response.created(URI.create("/api/masses/" + id)).entity(one(id)).build();
  }

  @PUT
  @Path("/{id}")
  @Transactional
  @Consumes(MediaType.APPLICATION_JSON)
  public MassBody change(@RestPath String id, MassBody body) {
    save.change(id, Asked.body(body).toRequest(one(id)));
    return one(id);
  }

  @DELETE
  @Path("/{id}")
  public void cancel(
      @RestPath String id, @QueryParam("takenOverBy") @DefaultValue("") String takenOverBy) {
    save.cancel(id, takenOverBy);
  }
}
