package vestiary.absence;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Objects;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;

/** When somebody comes to Masses from outside, and whether he brings vestments. */
@Path("/api/people/{slug}/arrivals")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.ENTER_MASSES)
class ArrivalsResource {

  private final SayArrival say;
  private final ReadArrivals read;

  ArrivalsResource(SayArrival say, ReadArrivals read) {
    this.say = say;
    this.read = read;
  }

  @GET
  @Transactional
  @Operation(summary = "The Masses of the weeks to come at which somebody is named, by start")
  public List<ArrivalBody> all(@RestPath String slug) {
    return read.of(slug).coming().stream().map(ReadArrivals.Coming::toBody).toList();
  }

  @PUT
  @Path("/{mass}")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Says when he comes to a Mass and what he brings")
  public void say(@RestPath String slug, @RestPath String mass, ArrivalBody.Wanted body) {
    ArrivalBody.Wanted wanted = Asked.body(body);
    say.say(
        slug, mass, Objects.toString(wanted.arrives(), ""), Objects.toString(wanted.brings(), ""));
  }
}
