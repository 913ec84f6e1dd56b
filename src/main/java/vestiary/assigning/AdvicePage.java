package vestiary.assigning;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.web.Entries;

/** Who could celebrate one Mass: on a page of its own, and beside the form while it is filled. */
@Path("/")
@Produces(MediaType.TEXT_HTML)
class AdvicePage {

  private final AdviseOnMass advise;
  private final TypedMass typed;
  private final AdviceSheet sheet;
  private final DoneWords done;

  AdvicePage(AdviseOnMass advise, TypedMass typed, AdviceSheet sheet, DoneWords done) {
    this.advise = advise;
    this.typed = typed;
    this.sheet = sheet;
    this.done = done;
  }

  @CheckedTemplate(basePath = "assigning")
  static class Templates {
    private Templates() {}

    static native TemplateInstance advice(AdviceView view);

    static native TemplateInstance who(WhoView view);
  }

  @GET
  @Path("/masses/{id}/celebrant")
  public TemplateInstance one(@RestPath String id, @QueryParam("done") String assignment) {
    return Templates.advice(
        sheet.of(advise.of(id), done.of(assignment, "/masses/%s/celebrant".formatted(id))));
  }

  /** A few sentences on what stands in the form; none while too little does. */
  @GET
  @Path("/celebrant-advice")
  public TemplateInstance typed(@Context UriInfo uri) {
    return Templates.who(
        typed
            .find(Entries.of(uri.getQueryParameters()))
            .map(found -> sheet.who(advise.of(found.scene(), found.mass()), found.celebrant()))
            .orElse(WhoView.NOTHING));
  }
}
