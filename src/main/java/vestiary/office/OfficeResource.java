package vestiary.office;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;

/** The sheet for the bishop's office of one Mass. */
@Path("/api/masses/{id}/office-sheet")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.PUBLISH_TIMES)
class OfficeResource {

  private final KeepOfficeSheet keep;
  private final ReadDueSheets due;
  private final ReadMasses masses;

  OfficeResource(KeepOfficeSheet keep, ReadDueSheets due, ReadMasses masses) {
    this.keep = keep;
    this.due = due;
    this.masses = masses;
  }

  @GET
  @Transactional
  public OfficeBody one(@RestPath String id) {
    DatedMass mass = masses.get(id);
    return OfficeBody.of(due.of(mass), keep.of(mass), due.today());
  }

  @PUT
  @Transactional
  @Consumes(MediaType.APPLICATION_JSON)
  public OfficeBody keep(@RestPath String id, OfficeBody body) {
    keep.keep(id, OfficeBody.toRequest(body));
    return one(id);
  }

  /** Notes that it was sent, today unless {@code sentOn} says otherwise. */
  @POST
  @Path("/sent")
  @Transactional
  @Consumes(MediaType.APPLICATION_JSON)
  public OfficeBody sent(@RestPath String id, OfficeBody body) {
    keep.sent(id, Asked.body(body).sentOn());
    return one(id);
  }
}
