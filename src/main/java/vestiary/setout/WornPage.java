package vestiary.setout;

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

/** After Mass: what was really worn. */
@Path("/masses/{id}/worn")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.SET_OUT)
class WornPage {

  private static final Map<String, String> DONE =
      Map.of(
          "kept",
          word("Kept: this is what was worn."),
          "as-planned",
          word("All was worn as planned."));

  private final PutRight worn;
  private final WornSheet sheet;

  WornPage(PutRight worn, WornSheet sheet) {
    this.worn = worn;
    this.sheet = sheet;
  }

  @CheckedTemplate(basePath = "setout")
  static class Templates {
    private Templates() {}

    static native TemplateInstance worn(WornView view);
  }

  @GET
  @Transactional
  public TemplateInstance show(
      @RestPath String id, @QueryParam("done") @DefaultValue("") String done) {
    return Templates.worn(sheet.stored(id, say(DONE.getOrDefault(done, ""))));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response keep(@RestPath String id, MultivaluedMap<String, String> sent) {
    Entries typed = Entries.of(sent);
    return FormAnswer.of(
        () -> {
          worn.keep(id, WornEntries.read(typed));
          return PageAnswer.seeOther("/masses/%s/worn?done=kept".formatted(id));
        },
        refusal ->
            PageAnswer.of(
                refusal.status(), Templates.worn(sheet.typed(id, typed, refusal.detail()))));
  }

  @POST
  @Path("/as-planned")
  public Response asPlanned(@RestPath String id) {
    worn.keep(id, List.of());
    return PageAnswer.seeOther("/masses/%s/worn?done=as-planned".formatted(id));
  }
}
