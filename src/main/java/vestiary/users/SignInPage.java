package vestiary.users;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.core.http.HttpServerRequest;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.CookieParam;
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
import jakarta.ws.rs.core.UriBuilder;
import java.util.Map;
import java.util.UUID;
import vestiary.access.Clusters;
import vestiary.access.CurrentVisitor;
import vestiary.access.OpenToAll;
import vestiary.access.Secret;
import vestiary.access.SessionCookie;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.web.Entries;
import vestiary.web.Frame;
import vestiary.web.PageAnswer;

/** Where people come in and go out. */
@Path("/")
@Produces(MediaType.TEXT_HTML)
@OpenToAll
class SignInPage {

  private final SignIn signIn;
  private final SignInSheet sheet;
  private final SessionCookie cookie;
  private final DeviceCookie known;
  private final CurrentVisitor current;
  private final Landing landing;
  private final Clusters clusters;

  SignInPage(
      SignIn signIn,
      SignInSheet sheet,
      SessionCookie cookie,
      DeviceCookie known,
      CurrentVisitor current,
      Landing landing,
      Clusters clusters) {
    this.current = current;
    this.landing = landing;
    this.clusters = clusters;
    this.signIn = signIn;
    this.sheet = sheet;
    this.cookie = cookie;
    this.known = known;
  }

  @CheckedTemplate(basePath = "users")
  static class Templates {
    private Templates() {}

    static native TemplateInstance signIn(SignInView view);

    static native TemplateInstance sendOn(SendOnView view);
  }

  @GET
  @Path("/sign-in")
  public Response form(
      @QueryParam("back") @DefaultValue("/week") String back,
      @QueryParam("cluster") @DefaultValue("") String word) {
    return answer(200, word, Entries.empty().with("back", back), "");
  }

  @POST
  @Path("/sign-in")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response enter(
      @QueryParam("cluster") @DefaultValue("") String word,
      MultivaluedMap<String, String> form,
      @CookieParam(DeviceCookie.NAME) @DefaultValue("") String device,
      @Context HttpServerRequest request) {
    Entries typed = Entries.of(form);
    // A word that is no cluster's takes the same way as a name that is nobody's.
    boolean isKnown = word.isBlank() || clusters.find(word).isPresent();
    boolean stays = typed.isTicked("stays");
    return FormAnswer.of(
        () -> {
          SignIn.Opened opened =
              signIn.signIn(
                  new SignIn.Attempt(
                      isKnown ? typed.text("login") : nobodys(word, typed.text("login")),
                      typed.text("password"),
                      request.remoteAddress().hostAddress(),
                      device),
                  stays ? SignIn.LASTING : SignIn.PASSING);
          return Response.fromResponse(in(typed, opened.user(), opened.session()))
              .cookie(
                  stays
                      ? cookie.of(opened.session(), SignIn.LASTING, request)
                      : cookie.of(opened.session(), request),
                  known.of(opened.device(), request))
              .build();
        },
        refusal -> again(word, typed, refusal));
  }

  @POST
  @Path("/sign-in/demo")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response enterDemo(
      MultivaluedMap<String, String> form, @Context HttpServerRequest request) {
    Entries pressed = Entries.of(form);
    String as = pressed.text("as");
    Secret session = signIn.signInToDemo(as);
    return Response.fromResponse(in(pressed, UUID.fromString(as), session))
        .cookie(cookie.of(session, request))
        .build();
  }

  @POST
  @Path("/sign-out")
  public Response leave(
      @CookieParam("vestiary-session") @DefaultValue("") String session,
      @Context HttpServerRequest request) {
    Secret.parse(session).ifPresent(signIn::end);
    return Response.fromResponse(PageAnswer.seeOther("/sign-in"))
        .cookie(cookie.gone(request))
        .build();
  }

  private Response in(Entries entries, UUID user, Secret session) {
    CarriedForm carried = CarriedForm.of(entries);
    if (!carried.isThere()) {
      return PageAnswer.seeOther(landing.of(entries.text("back"), user));
    }
    current.begin(session);
    return PageAnswer.of(
        200,
        Templates.sendOn(new SendOnView(Frame.empty(), carried.path(), carried.shown().toList())));
  }

  /** A name that nobody signs in by, another one for each word, so that tries are counted alike. */
  private static String nobodys(String word, String login) {
    return "%s/%s".formatted(word, login);
  }

  /** Where name and password are sent for the cluster of that word. */
  static String address(String word) {
    return word.isEmpty()
        ? "/sign-in"
        : UriBuilder.fromPath("/sign-in").queryParam("cluster", "{word}").build(word).toString();
  }

  private Response again(String word, Entries typed, Refusal refusal) {
    Entries marked = FormAnswer.mark(typed, refusal, Map.of());
    String problem = marked.errors().isEmpty() ? refusal.detail() : "";
    if (refusal instanceof Refusal.TooOften) {
      return PageAnswer.of(
          refusal.status(), Templates.signIn(sheet.bare(word.strip(), marked, problem)));
    }
    return answer(refusal.status(), word, marked, problem);
  }

  private Response answer(int status, String word, Entries entries, String problem) {
    return PageAnswer.of(status, Templates.signIn(sheet.view(word.strip(), entries, problem)));
  }
}
