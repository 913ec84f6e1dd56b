package vestiary.web;

import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.core.Response;
import java.net.URI;

/** How a page answers where more than a 200 with a template is to be said. */
public final class PageAnswer {

  public static final String HTML = "text/html;charset=UTF-8";

  private PageAnswer() {}

  /** The page under this status. */
  public static Response of(int status, TemplateInstance page) {
    return Response.status(status).type(HTML).entity(page).build();
  }

  /** Leads the browser on after a form was sent, so that looking again sends nothing twice. */
  public static Response seeOther(URI address) {
    return Response.seeOther(address).build();
  }

  public static Response seeOther(String path) {
    return seeOther(URI.create(path));
  }
}
