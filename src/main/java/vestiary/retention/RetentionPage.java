package vestiary.retention;

import static vestiary.web.Speech.say;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
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
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.FormAnswer;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** How long the cluster keeps what is said of people. */
@Path("/settings/retention")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.KEEP_RECORD)
class RetentionPage {

  private static final List<String> FIELDS =
      Arrays.stream(Keeping.values()).map(Keeping::field).toList();

  private final KeptFor keptFor;
  private final RetentionSheet sheet;

  RetentionPage(KeptFor keptFor, RetentionSheet sheet) {
    this.keptFor = keptFor;
    this.sheet = sheet;
  }

  @CheckedTemplate(basePath = "retention")
  static class Templates {
    private Templates() {}

    static native TemplateInstance retention(RetentionView view);
  }

  @GET
  @Needs(Action.KEEP_RECORD)
  public TemplateInstance form(@QueryParam("done") @DefaultValue("") String done) {
    Entries entries = Entries.empty();
    for (Map.Entry<Keeping, Integer> kept : keptFor.days().entrySet()) {
      entries = entries.with(kept.getKey().field(), String.valueOf(kept.getValue()));
    }
    return Templates.retention(sheet.view(entries, done.equals("saved") ? say("Saved.") : "", ""));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response change(MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> {
          Map<Keeping, String> days = new EnumMap<>(Keeping.class);
          Arrays.stream(Keeping.values()).forEach(k -> days.put(k, typed.text(k.field())));
          keptFor.change(days);
          return PageAnswer.seeOther("/settings/retention?done=saved");
        },
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, Map.of());
          return PageAnswer.of(
              refusal.status(),
              Templates.retention(
                  sheet.view(marked, "", FormAnswer.problem(refusal, marked, FIELDS))));
        });
  }
}
