package vestiary.users;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.core.http.HttpServerRequest;
import jakarta.transaction.Transactional;
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
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.access.Needs;
import vestiary.access.SessionCookie;
import vestiary.access.Visitor;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.users.AccountSheet.Note;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** One's own password, sessions and tokens. */
@Path("/account")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.KEEP_OWN_ACCOUNT)
class AccountPage {

  private static final Map<String, String> DONE =
      Map.of(
          "password", "Your password is changed; every other session has ended.",
          "token", "The token has ended.");

  private final CurrentVisitor current;
  private final ChoosePassword choose;
  private final SignIn signIn;
  private final Tokens tokens;
  private final AccountSheet sheet;
  private final SessionCookie cookie;

  AccountPage(
      CurrentVisitor current,
      ChoosePassword choose,
      SignIn signIn,
      Tokens tokens,
      AccountSheet sheet,
      SessionCookie cookie) {
    this.current = current;
    this.choose = choose;
    this.signIn = signIn;
    this.tokens = tokens;
    this.sheet = sheet;
    this.cookie = cookie;
  }

  @CheckedTemplate(basePath = "users")
  static class Templates {
    private Templates() {}

    static native TemplateInstance account(AccountView view);
  }

  @GET
  @Transactional
  @Needs(Action.KEEP_OWN_ACCOUNT)
  public Response one(@QueryParam("done") @DefaultValue("") String done) {
    return answer(200, Entries.empty(), Note.done(DONE.getOrDefault(done, "")));
  }

  @POST
  @Path("/password")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response changePassword(
      MultivaluedMap<String, String> form, @Context HttpServerRequest request) {
    Entries typed = Entries.of(form);
    UUID me = me();
    return FormAnswer.of(
        () -> {
          choose.inPlaceOf(me, typed.text("old"), typed.text("password"), typed.text("again"));
          return Response.fromResponse(PageAnswer.seeOther("/account?done=password"))
              .cookie(cookie.of(signIn.open(me, SignIn.PASSING), request))
              .build();
        },
        refusal -> again(typed, refusal));
  }

  @POST
  @Path("/sessions/end")
  public Response endSessions(@Context HttpServerRequest request) {
    signIn.endAll(me());
    return Response.fromResponse(PageAnswer.seeOther("/sign-in"))
        .cookie(cookie.gone(request))
        .build();
  }

  /** The token is shown on this very answer, and never again. */
  @POST
  @Path("/tokens")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response makeToken(MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    UUID me = me();
    return FormAnswer.of(
        () -> {
          String made =
              tokens
                  .make(
                      me,
                      new Tokens.Request(
                          typed.text("name"), typed.text("days"), !typed.isTicked("changes")))
                  .text();
          return answer(200, Entries.empty(), new Note("", "", made));
        },
        refusal -> again(typed, refusal));
  }

  @POST
  @Path("/tokens/{id}/end")
  public Response endToken(@RestPath String id) {
    tokens.end(me(), id);
    return PageAnswer.seeOther("/account?done=token");
  }

  private UUID me() {
    if (current.visitor() instanceof Visitor.User user) {
      return user.id();
    }
    throw new Refused(
        new Refusal.NotAllowed("The token of the server belongs to nobody who has an account."));
  }

  private Response again(Entries typed, Refusal refusal) {
    Entries marked = FormAnswer.mark(typed, refusal, Map.of());
    String problem = marked.errors().isEmpty() ? refusal.detail() : "";
    return answer(refusal.status(), marked, new Note("", problem, ""));
  }

  private Response answer(int status, Entries entries, Note note) {
    return PageAnswer.of(status, Templates.account(sheet.view(me(), entries, note)));
  }
}
