package vestiary.plan;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.pool.TakeHome;
import vestiary.web.PageAnswer;

/** One press says that pieces are home again. */
@Path("/movements/home")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.PLAN)
class HomePage {

  private final TakeHome home;

  HomePage(TakeHome home) {
    this.home = home;
  }

  /** Notes it, and leads back to the journeys of the present week. */
  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response take(@FormParam("piece") List<String> pieces) {
    home.take(new TakeHome.Request(pieces));
    return PageAnswer.seeOther("/movements");
  }
}
