package vestiary.users;

import static vestiary.web.Speech.say;

import io.vertx.core.http.HttpServerRequest;
import jakarta.ws.rs.CookieParam;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import vestiary.access.OpenToAll;
import vestiary.access.Secret;
import vestiary.access.SessionCookie;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.users.EnterByProvider.Purpose;
import vestiary.web.PageAnswer;

/**
 * The way to another service and back. It begins with a link and not with a form, since a form of
 * ours may lead to no other site.
 */
@Path("/sign-in/outside")
@Produces(MediaType.TEXT_HTML)
@OpenToAll
class OutsidePage {

  private final OpenIdProvider provider;
  private final EnterByProvider enter;
  private final SignIn signIn;
  private final Landing landing;
  private final SessionCookie session;
  private final OutsideCookie cookie;

  OutsidePage(
      OpenIdProvider provider,
      EnterByProvider enter,
      SignIn signIn,
      Landing landing,
      SessionCookie session,
      OutsideCookie cookie) {
    this.provider = provider;
    this.enter = enter;
    this.signIn = signIn;
    this.landing = landing;
    this.session = session;
    this.cookie = cookie;
  }

  /**
   * Begins.
   *
   * @param link by which somebody was let in; empty for whoever is linked already
   */
  @GET
  public Response begin(
      @QueryParam("back") @DefaultValue("/week") String back,
      @QueryParam("link") @DefaultValue("") String link,
      @Context HttpServerRequest request) {
    refuseIfOff();
    Purpose purpose =
        Secret.parse(link)
            .filter(secret -> !link.isEmpty())
            .map(Purpose::byLink)
            .orElseGet(() -> Purpose.signIn(Back.of(back)));
    return away(enter.begin(purpose), request);
  }

  /** Goes on where a form of ours has begun. */
  @GET
  @Path("/go")
  public Response go(
      @CookieParam(OutsideCookie.NAME) @DefaultValue("") String way,
      @Context HttpServerRequest request) {
    refuseIfOff();
    return Secret.parse(way)
        .map(secret -> away(secret, request))
        .orElseGet(() -> PageAnswer.seeOther("/sign-in"));
  }

  @GET
  @Path("/return")
  public Response end(
      @QueryParam("code") @DefaultValue("") String code,
      @QueryParam("state") @DefaultValue("") String state,
      @CookieParam(OutsideCookie.NAME) @DefaultValue("") String way,
      @Context HttpServerRequest request) {
    refuseIfOff();
    EnterByProvider.Entered entered = enter.end(way, code, state);
    Response.ResponseBuilder answer =
        Response.fromResponse(
                PageAnswer.seeOther(
                    entered.alreadyIn()
                        ? entered.back()
                        : landing.of(entered.back(), entered.user())))
            .cookie(cookie.gone(request));
    if (!entered.alreadyIn()) {
      answer.cookie(session.of(signIn.open(entered.user(), SignIn.PASSING), request));
    }
    return answer.build();
  }

  private Response away(Secret way, HttpServerRequest request) {
    return Response.seeOther(provider.address(new OutsideWay(way)))
        .cookie(cookie.of(way, request))
        .build();
  }

  private void refuseIfOff() {
    if (!provider.isOn()) {
      throw new Refused(
          new Refusal.Beyond(say("No other service to sign in by is named on this server.")));
    }
  }
}
