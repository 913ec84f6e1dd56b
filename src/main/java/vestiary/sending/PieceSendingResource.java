package vestiary.sending;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;

/** A single piece goes out and comes back. */
@Path("/api/pieces/{code}")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Needs(Action.SEND)
class PieceSendingResource {

  private final FindItem items;
  private final SendAndTell tell;

  PieceSendingResource(FindItem items, SendAndTell tell) {
    this.items = items;
    this.tell = tell;
  }

  /** Sends it out; answers what is known of it now. */
  @POST
  @Path("/out")
  public List<WhereaboutsBody> out(@RestPath String code, OutBody body) {
    return tell.out(items.getPiece(code), body);
  }

  /** Takes it in. */
  @POST
  @Path("/back")
  public List<WhereaboutsBody> back(@RestPath String code, OutBody.BackBody body) {
    return tell.back(items.getPiece(code), body);
  }
}
