package vestiary.planning;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.web.Frames;

/** What everybody wears at one Mass, to be read or pinned up in the sacristy. */
@Path("/masses/{id}/vesture")
@Produces(MediaType.TEXT_HTML)
class VesturePage {

  private final NeedsOfMass needs;
  private final Frames frames;

  VesturePage(NeedsOfMass needs, Frames frames) {
    this.needs = needs;
    this.frames = frames;
  }

  @CheckedTemplate(basePath = "planning")
  static class Templates {
    private Templates() {}

    static native TemplateInstance vesture(VestureView view);
  }

  @GET
  @Transactional
  public TemplateInstance vesture(@RestPath String id) {
    NeedsOfMass.Found found = needs.get(id);
    return Templates.vesture(
        new VestureSheet(found.mass(), found.needs(), found.zone(), found.locale())
            .view(frames.of("day", "/masses/" + id + "/vesture")));
  }
}
