package vestiary.erasure;

import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;

/** Removes a user for good; it cannot be undone. */
@Path("/api/users/{id}/erasure")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.KEEP_RECORD)
class UserErasureResource {

  private final RemoveForGood remove;

  UserErasureResource(RemoveForGood remove) {
    this.remove = remove;
  }

  @POST
  @Operation(summary = "Remove a user for good")
  @APIResponse(responseCode = "204", description = "Removed; sessions and tokens have ended")
  @APIResponse(responseCode = "404", description = "No user of that id")
  public void remove(@RestPath String id) {
    remove.user(id);
  }
}
