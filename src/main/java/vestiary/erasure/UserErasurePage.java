package vestiary.erasure;

import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;

/** The same for a user who is in no list of people. */
@Path("/users/{id}/erasure")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.KEEP_RECORD)
class UserErasurePage {

  private final RemoveForGood remove;
  private final ErasureSheet sheet;

  UserErasurePage(RemoveForGood remove, ErasureSheet sheet) {
    this.remove = remove;
    this.sheet = sheet;
  }

  @GET
  @Needs(Action.KEEP_RECORD)
  public TemplateInstance question(@RestPath String id) {
    return ErasurePage.Templates.erasure(sheet.user(id, ""));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response remove(@RestPath String id, MultivaluedMap<String, String> form) {
    return ErasurePage.answer(
        form, () -> remove.user(id), "/users", problem -> sheet.user(id, problem));
  }
}
