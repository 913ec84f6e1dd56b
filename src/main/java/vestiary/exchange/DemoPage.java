package vestiary.exchange;

import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.web.PageAnswer;

/** The demo, moved to the present week by whoever finds it in the past. */
@Path("/demo")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.SETTLE_CLUSTER)
class DemoPage {

  private final Demo demo;

  DemoPage(Demo demo) {
    this.demo = demo;
  }

  @POST
  @Path("/present-week")
  public Response moveToPresentWeek() {
    demo.moveToPresentWeek();
    return PageAnswer.seeOther("/week");
  }
}
