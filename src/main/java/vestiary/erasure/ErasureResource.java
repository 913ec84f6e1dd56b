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

/** Removes somebody for good; it cannot be undone. */
@Path("/api/people/{slug}/erasure")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.KEEP_RECORD)
class ErasureResource {

  private final RemoveForGood remove;

  ErasureResource(RemoveForGood remove) {
    this.remove = remove;
  }

  @POST
  @Operation(summary = "Remove a person, with any account of that name, for good")
  @APIResponse(responseCode = "204", description = "Removed; the record reads without the name")
  @APIResponse(responseCode = "404", description = "Nobody of that short name")
  public void person(@RestPath String slug) {
    remove.person(slug);
  }
}
