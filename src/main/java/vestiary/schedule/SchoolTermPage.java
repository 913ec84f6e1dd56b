package vestiary.schedule;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.FormAnswer;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** The school terms of the cluster: listed, entered, taken off. */
@Path("/patterns/terms")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.ENTER_PATTERNS)
class SchoolTermPage {

  private static final Map<String, String> DONE =
      Map.of("kept", word("Kept."), "removed", word("Taken off."));

  private static final List<String> FIELDS = List.of("name", "first", "last");

  private final KeepSchoolTerms terms;
  private final SchoolTermsSheet sheet;

  SchoolTermPage(KeepSchoolTerms terms, SchoolTermsSheet sheet) {
    this.terms = terms;
    this.sheet = sheet;
  }

  @CheckedTemplate(basePath = "schedule")
  static class Templates {
    private Templates() {}

    static native TemplateInstance terms(SchoolTermsView view);
  }

  @GET
  @Transactional
  public TemplateInstance all(@QueryParam("done") @DefaultValue("") String done) {
    return Templates.terms(sheet.view(say(DONE.getOrDefault(done, "")), Entries.empty(), ""));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response keep(MultivaluedMap<String, String> sent) {
    Entries typed = Entries.of(sent);
    return FormAnswer.of(
        () -> {
          terms.keep(typed.text("name"), typed.text("first"), typed.text("last"));
          return PageAnswer.seeOther("/patterns/terms?done=kept");
        },
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, Map.of());
          return PageAnswer.of(
              refusal.status(),
              Templates.terms(sheet.view("", marked, FormAnswer.problem(refusal, marked, FIELDS))));
        });
  }

  @POST
  @Path("/{id}/removal")
  public Response remove(@RestPath String id) {
    terms.remove(id);
    return PageAnswer.seeOther("/patterns/terms?done=removed");
  }
}
