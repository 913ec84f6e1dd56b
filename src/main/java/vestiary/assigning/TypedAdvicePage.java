package vestiary.assigning;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import vestiary.web.Entries;

/** Who could celebrate the Mass that stands in a form, while it is filled. */
@Path("/celebrant-advice")
@Produces(MediaType.TEXT_HTML)
class TypedAdvicePage {

  private final AdviseOnMass advise;
  private final TypedMass typed;
  private final AdviceSheet sheet;

  TypedAdvicePage(AdviseOnMass advise, TypedMass typed, AdviceSheet sheet) {
    this.advise = advise;
    this.typed = typed;
    this.sheet = sheet;
  }

  @CheckedTemplate(basePath = "assigning")
  static class Templates {
    private Templates() {}

    static native TemplateInstance who(WhoView view);
  }

  /** A few sentences; none while too little stands there. */
  @GET
  public TemplateInstance said(@Context UriInfo uri) {
    return Templates.who(
        typed
            .find(Entries.of(uri.getQueryParameters()))
            .map(found -> sheet.who(advise.of(found.scene(), found.mass()), found.celebrant()))
            .orElse(WhoView.NOTHING));
  }
}
