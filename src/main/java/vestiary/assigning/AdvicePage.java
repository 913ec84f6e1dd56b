package vestiary.assigning;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import org.jboss.resteasy.reactive.RestPath;

/** Who could celebrate one Mass. */
@Path("/masses/{id}/celebrant")
@Produces(MediaType.TEXT_HTML)
class AdvicePage {

  private final AdviseOnMass advise;
  private final AdviceSheet sheet;
  private final DoneWords done;

  AdvicePage(AdviseOnMass advise, AdviceSheet sheet, DoneWords done) {
    this.advise = advise;
    this.sheet = sheet;
    this.done = done;
  }

  @CheckedTemplate(basePath = "assigning")
  static class Templates {
    private Templates() {}

    static native TemplateInstance advice(AdviceView view);
  }

  @GET
  public TemplateInstance one(@RestPath String id, @QueryParam("done") String assignment) {
    return Templates.advice(
        sheet.of(advise.of(id), done.of(assignment, "/masses/%s/celebrant".formatted(id))));
  }
}
