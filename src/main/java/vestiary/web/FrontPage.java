package vestiary.web;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;

/** The bare address leads to what people look at first: the week. */
@Path("/")
@Produces(MediaType.TEXT_HTML)
class FrontPage {

  @GET
  @Transactional
  public Response week() {
    return PageAnswer.seeOther("/week");
  }
}
