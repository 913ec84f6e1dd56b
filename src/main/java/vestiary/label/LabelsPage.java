package vestiary.label;

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
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.FormAnswer;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** Labels for sets and pieces, on sheets that shops sell. */
@Path("/labels")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.SEND)
class LabelsPage {

  private final ChooseLabels choose;
  private final LabelsSheet sheet;

  LabelsPage(ChooseLabels choose, LabelsSheet sheet) {
    this.choose = choose;
    this.sheet = sheet;
  }

  @CheckedTemplate(basePath = "label")
  static class Templates {
    private Templates() {}

    static native TemplateInstance labels(LabelsView view);
  }

  @GET
  @Transactional
  public Response labels(
      @QueryParam("church") @DefaultValue("") String church,
      @QueryParam("which") @DefaultValue("new") String which,
      @QueryParam("codes") @DefaultValue("") String codes,
      @QueryParam("sheet") @DefaultValue("") String form,
      @QueryParam("start") @DefaultValue("1") String start,
      @QueryParam("done") @DefaultValue("") String done) {
    Entries typed =
        Entries.empty()
            .with("church", church)
            .with("which", which)
            .with("codes", codes)
            .with("sheet", form)
            .with("start", start);
    return FormAnswer.of(
        () -> PageAnswer.of(200, Templates.labels(sheet.view(typed, done))),
        refusal -> PageAnswer.of(refusal.status(), Templates.labels(sheet.again(typed, refusal))));
  }

  /** Notes that the sheets came out, so that these are not asked for again. */
  @POST
  @Path("/printed")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response printed(MultivaluedMap<String, String> sent) {
    Entries typed = Entries.of(sent);
    return FormAnswer.of(
        () -> {
          choose.notePrinted(LabelsSheet.request(typed));
          return PageAnswer.seeOther("/labels?done=printed");
        },
        refusal -> PageAnswer.of(refusal.status(), Templates.labels(sheet.again(typed, refusal))));
  }
}
