package vestiary.problem;

import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.calendar.Term;

/** What a kind of refusal means: the page that the {@code type} of a problem document leads to. */
@Path("/problems")
@Produces(MediaType.TEXT_HTML)
class ProblemPage {

  private final ProblemSheets sheets;

  ProblemPage(ProblemSheets sheets) {
    this.sheets = sheets;
  }

  @GET
  @Path("/{name}")
  public TemplateInstance explain(@RestPath String name) {
    return sheets.explain(
        Term.find(ProblemKind.class, name)
            .orElseThrow(() -> new Refused(new Refusal.NotThere("kind of problem", name))));
  }
}
