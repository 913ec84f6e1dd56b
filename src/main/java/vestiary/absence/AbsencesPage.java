package vestiary.absence;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import vestiary.problem.Asked;

/** Who is away in the next eight weeks, on the screen and on paper. */
@Path("/absences")
@Produces(MediaType.TEXT_HTML)
class AbsencesPage {

  private final AbsencesSheet sheet;

  AbsencesPage(AbsencesSheet sheet) {
    this.sheet = sheet;
  }

  @CheckedTemplate(basePath = "absence")
  static class Templates {
    private Templates() {}

    static native TemplateInstance absences(AbsencesView view);
  }

  /**
   * @param from a day of the first week; empty for the present one
   */
  @GET
  @Transactional
  public TemplateInstance all(@QueryParam("from") @DefaultValue("") String from) {
    Asked asked = new Asked();
    var first = asked.findDate("from", from);
    asked.refuseIfFaulty();
    return Templates.absences(sheet.view(first.orElseGet(sheet::monday)));
  }
}
