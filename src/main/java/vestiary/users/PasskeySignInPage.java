package vestiary.users;

import io.vertx.core.http.HttpServerRequest;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import java.util.UUID;
import vestiary.access.OpenToAll;
import vestiary.access.Secret;
import vestiary.access.SessionCookie;
import vestiary.problem.Asked;

/** Where a device lets its user in, as the script of the page for signing in asks for it. */
@Path("/sign-in/passkey")
@Produces(MediaType.APPLICATION_JSON)
@OpenToAll
class PasskeySignInPage {

  private final EnterByPasskey enter;
  private final SignIn signIn;
  private final SessionCookie cookie;
  private final Landing landing;

  PasskeySignInPage(EnterByPasskey enter, SignIn signIn, SessionCookie cookie, Landing landing) {
    this.enter = enter;
    this.signIn = signIn;
    this.cookie = cookie;
    this.landing = landing;
  }

  @POST
  @Path("/challenge")
  public PasskeyBody.ToSignIn begin() {
    return enter.begin();
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  public Response enter(PasskeyBody.Answer body, @Context HttpServerRequest request) {
    PasskeyBody.Answer answer = Asked.body(body);
    boolean stays = Boolean.TRUE.equals(answer.stays());
    UUID user = enter.user(answer);
    Secret session = signIn.open(user, stays ? SignIn.LASTING : SignIn.PASSING);
    String to = landing.of(Optional.ofNullable(answer.back()).orElse(""), user);
    return Response.ok(new PasskeyBody.Way(to))
        .cookie(stays ? cookie.of(session, SignIn.LASTING, request) : cookie.of(session, request))
        .build();
  }
}
