package vestiary.users;

import static vestiary.web.Speech.say;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.core.http.HttpServerRequest;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Map;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.OpenToAll;
import vestiary.access.SessionCookie;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Entries;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.PageAnswer;

/** Where a link leads that lets somebody choose a password once. */
@Path("/welcome/{link}")
@Produces(MediaType.TEXT_HTML)
@OpenToAll
class WelcomePage {

  private final ChoosePassword choose;
  private final SignIn signIn;
  private final SessionCookie cookie;
  private final OpenIdProvider provider;

  WelcomePage(ChoosePassword choose, SignIn signIn, SessionCookie cookie, OpenIdProvider provider) {
    this.provider = provider;
    this.choose = choose;
    this.signIn = signIn;
    this.cookie = cookie;
  }

  @CheckedTemplate(basePath = "users")
  static class Templates {
    private Templates() {}

    static native TemplateInstance welcome(WelcomeView view);
  }

  @GET
  public TemplateInstance form(@RestPath String link) {
    return page(link, Entries.empty(), "");
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response choose(
      @RestPath String link,
      MultivaluedMap<String, String> form,
      @Context HttpServerRequest request) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> {
          UUID user = choose.byLink(link, typed.text("password"), typed.text("again"));
          return Response.fromResponse(PageAnswer.seeOther("/week"))
              .cookie(cookie.of(signIn.open(user, SignIn.PASSING), request))
              .build();
        },
        refusal -> again(link, typed, refusal));
  }

  private Response again(String link, Entries typed, Refusal refusal) {
    Entries marked = FormAnswer.mark(typed, refusal, Map.of());
    String problem = marked.errors().isEmpty() ? refusal.detail() : "";
    return PageAnswer.of(refusal.status(), page(link, marked, problem));
  }

  private TemplateInstance page(String link, Entries entries, String problem) {
    String login =
        choose
            .findOwner(link)
            .map(user -> user.login)
            .orElseThrow(
                () ->
                    new Refused(
                        new Refusal.Beyond(
                            say("This link was used already, or has ended. Ask for a new one."))));
    return Templates.welcome(
        new WelcomeView(
            Frame.empty(),
            problem,
            "/welcome/" + link,
            login,
            new Field("", entries.error("password")),
            new Field("", entries.error("again")),
            provider.isOn() ? provider.name() : "",
            link));
  }
}
