package vestiary.users;

import io.vertx.core.http.HttpServerRequest;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Duration;
import java.util.Locale;
import org.jboss.resteasy.reactive.RestQuery;
import vestiary.access.OpenToAll;
import vestiary.access.SessionCookie;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Written;

/**
 * Keeps on this device in which language pages are read, and leads back. It is kept for the device
 * and not for the user, since the shared computer of a sacristy has many users, and many devices
 * have none.
 */
@Path("/language")
@Produces(MediaType.TEXT_HTML)
@OpenToAll
class LanguagePage {

  private static final Duration YEAR = Duration.ofDays(365);

  private final SessionCookie session;

  LanguagePage(SessionCookie session) {
    this.session = session;
  }

  @GET
  public Response choose(
      @RestQuery String to,
      @RestQuery @DefaultValue(Back.WEEK) String back,
      @Context HttpServerRequest request) {
    Locale chosen =
        Written.LANGUAGES.stream()
            .filter(one -> one.toLanguageTag().equals(to))
            .findFirst()
            .orElseThrow(() -> new Refused(new Refusal.NotThere("language", String.valueOf(to))));
    return Response.seeOther(URI.create(Back.of(back))).cookie(cookie(chosen, request)).build();
  }

  private NewCookie cookie(Locale chosen, HttpServerRequest request) {
    return new NewCookie.Builder(Written.COOKIE)
        .value(chosen.toLanguageTag())
        .path("/")
        .httpOnly(true)
        .sameSite(NewCookie.SameSite.LAX)
        .secure(session.isSecure(request))
        .maxAge((int) YEAR.toSeconds())
        .build();
  }
}
