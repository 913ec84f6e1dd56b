package vestiary.users;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.core.http.HttpServerRequest;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Map;
import vestiary.access.OpenToAll;
import vestiary.problem.Asked;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.PageAnswer;

/** Where a forgotten password is told, and a link asked for. */
@Path("/recovery")
@Produces(MediaType.TEXT_HTML)
@OpenToAll
class RecoveryPage {

  private final RecoverByMail recover;
  private final Frames frames;

  RecoveryPage(RecoverByMail recover, Frames frames) {
    this.recover = recover;
    this.frames = frames;
  }

  @CheckedTemplate(basePath = "users")
  static class Templates {
    private Templates() {}

    static native TemplateInstance recovery(RecoveryView view);
  }

  @GET
  public TemplateInstance form(@QueryParam("sent") @DefaultValue("") String sent) {
    return page(Entries.empty(), "", sent.equals("yes"));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response ask(MultivaluedMap<String, String> form, @Context HttpServerRequest request) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> {
          Asked asked = new Asked();
          String login = asked.needed("login", typed.text("login"), SaveUser.LONGEST_LOGIN);
          asked.refuseIfFaulty();
          if (recover.isOn()) {
            recover.ask(login, request.remoteAddress().hostAddress());
          }
          return PageAnswer.seeOther("/recovery?sent=yes");
        },
        refusal -> again(typed, refusal));
  }

  private Response again(Entries typed, Refusal refusal) {
    Entries marked = FormAnswer.mark(typed, refusal, Map.of());
    String problem = marked.errors().isEmpty() ? refusal.detail() : "";
    return PageAnswer.of(refusal.status(), page(marked, problem, false));
  }

  private TemplateInstance page(Entries entries, String problem, boolean sent) {
    return Templates.recovery(
        new RecoveryView(
            frames.of("", "/recovery"), problem, entries.field("login"), recover.isOn(), sent));
  }
}
