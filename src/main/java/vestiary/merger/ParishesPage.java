package vestiary.merger;

import static vestiary.web.Speech.say;

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
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.FormAnswer;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** The parishes of the cluster; one is merged into another. */
@Path("/parishes")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.SETTLE_CLUSTER)
class ParishesPage {

  private static final List<String> FIELDS = List.of("from", "into", "since", "note");

  private final MergeParishes merge;
  private final ParishesSheet sheet;

  ParishesPage(MergeParishes merge, ParishesSheet sheet) {
    this.merge = merge;
    this.sheet = sheet;
  }

  @CheckedTemplate(basePath = "merger")
  static class Templates {
    private Templates() {}

    static native TemplateInstance parishes(ParishesView view);
  }

  @GET
  @Transactional
  public TemplateInstance all(@QueryParam("done") @DefaultValue("") String done) {
    return Templates.parishes(
        sheet.view(
            Entries.empty(),
            done.equals("merged") ? say("Merged. Churches and goods belong to the other now.") : "",
            ""));
  }

  @POST
  @Path("/merger")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response merge(MultivaluedMap<String, String> sent) {
    Entries typed = Entries.of(sent);
    return FormAnswer.of(
        () -> {
          merge.merge(
              typed.text("from"), typed.text("into"), typed.text("since"), typed.text("note"));
          return PageAnswer.seeOther("/parishes?done=merged");
        },
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, Map.of());
          return PageAnswer.of(
              refusal.status(),
              Templates.parishes(
                  sheet.view(marked, "", FormAnswer.problem(refusal, marked, FIELDS))));
        });
  }
}
