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
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;
import vestiary.web.PageAnswer;

/** One's own devices to sign in with, as the script of the account's page asks for them. */
@Path("/account/passkeys")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.KEEP_OWN_ACCOUNT)
class PasskeyPage {

  private final KeepPasskeys keep;
  private final OwnAccount own;

  PasskeyPage(KeepPasskeys keep, OwnAccount own) {
    this.keep = keep;
    this.own = own;
  }

  @POST
  @Path("/challenge")
  @Consumes(MediaType.APPLICATION_JSON)
  public PasskeyBody.ToAdd begin(PasskeyBody.Password body, @Context HttpServerRequest request) {
    String password = Optional.ofNullable(Asked.body(body).password()).orElse("");
    return keep.begin(own.id(), password, request.remoteAddress().hostAddress());
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  public PasskeyBody.Way add(PasskeyBody.Added body) {
    keep.add(own.id(), Asked.body(body));
    return new PasskeyBody.Way("/account?done=passkey");
  }

  @POST
  @Path("/{id}/removal")
  @Produces(MediaType.TEXT_HTML)
  public Response remove(@RestPath String id) {
    keep.remove(own.id(), id);
    return PageAnswer.seeOther("/account?done=no-passkey");
  }
}
