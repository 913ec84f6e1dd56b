package vestiary.serving;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;
import vestiary.schedule.ReadMasses;

/** Who serves at a Mass. */
@Path("/api/masses/{id}/serving")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.ENTER_MASSES)
class ServingResource {

  private final NameServing name;
  private final ReadMasses masses;

  ServingResource(NameServing name, ReadMasses masses) {
    this.name = name;
    this.masses = masses;
  }

  @GET
  @Transactional
  @Operation(summary = "Who serves at a Mass, by role and name")
  public List<ServingBody> all(@RestPath String id) {
    return masses.get(id).serving().stream().map(ServingBody::from).toList();
  }

  @PUT
  @Transactional
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Says who serves at a Mass: these and no others",
      description =
          "Servers and acolytes count as at least those who are named, and so do the albs that they need.")
  public List<ServingBody> set(@RestPath String id, ServingBody.Wanted body) {
    name.set(id, Asked.body(body).toWanted());
    return all(id);
  }
}
