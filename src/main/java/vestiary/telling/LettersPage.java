package vestiary.telling;

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
import vestiary.mail.KeptLetters;
import vestiary.problem.FormAnswer;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;
import vestiary.web.Speech;

/** How it stands with the letters of the cluster, for whoever looks after it. */
@Path("/letters")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.SETTLE_CLUSTER)
class LettersPage {

  private static final List<String> FIELDS = List.of("weekday", "hour", "officeDays");

  private static final Map<String, String> DONE =
      Map.of(
          "saved", Speech.word("Saved."),
          "again", Speech.word("It is tried once more, within a minute."),
          "dropped", Speech.word("The letter is taken away; nobody gets it."));

  private final KeptLetters letters;
  private final LettersSheet sheet;
  private final SettleTelling settings;

  LettersPage(KeptLetters letters, LettersSheet sheet, SettleTelling settings) {
    this.letters = letters;
    this.sheet = sheet;
    this.settings = settings;
  }

  @CheckedTemplate(basePath = "telling")
  static class Templates {
    private Templates() {}

    static native TemplateInstance letters(LettersView view);
  }

  @GET
  @Transactional
  @Needs(Action.SETTLE_CLUSTER)
  public TemplateInstance all(@QueryParam("done") @DefaultValue("") String done) {
    return Templates.letters(sheet.view(stored(), Speech.say(DONE.getOrDefault(done, "")), ""));
  }

  @POST
  @Path("/settings")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response settle(MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> {
          settings.settle(
              new SettleTelling.Request(
                  typed.text("weekday"),
                  typed.text("hour"),
                  typed.text("officeDays"),
                  typed.isTicked("namesPublic")));
          return PageAnswer.seeOther("/letters?done=saved");
        },
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, Map.of());
          return PageAnswer.of(
              refusal.status(),
              Templates.letters(
                  sheet.view(marked, "", FormAnswer.problem(refusal, marked, FIELDS))));
        });
  }

  @POST
  @Path("/{id}/try")
  public Response tryNow(@RestPath String id) {
    letters.tryNow(id);
    return PageAnswer.seeOther("/letters?done=again");
  }

  @POST
  @Path("/{id}/removal")
  public Response drop(@RestPath String id) {
    letters.drop(id);
    return PageAnswer.seeOther("/letters?done=dropped");
  }

  private Entries stored() {
    Telling now = settings.read();
    return Entries.empty()
        .with("weekday", String.valueOf(now.weekday().getValue()))
        .with("hour", now.hour().toString())
        .with("officeDays", String.valueOf(now.officeDays()))
        .with("namesPublic", String.valueOf(now.namesPublic()));
  }
}
