package vestiary.access;

import io.vertx.core.http.HttpServerRequest;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.NewCookie;
import java.time.Duration;
import java.util.UUID;

/**
 * Where somebody belongs, so that this device opens the sign-in page of their cluster, and where an
 * overseer looks. Neither is a secret and neither opens anything: the door asks the database each
 * time.
 */
@ApplicationScoped
public class ClusterCookies {

  static final String HOME = "vestiary-home";
  static final String LOOK = "vestiary-look";

  private static final Duration YEAR = Duration.ofDays(365);

  private final SessionCookie session;

  ClusterCookies(SessionCookie session) {
    this.session = session;
  }

  /** Looks into that cluster as long as the browser stays open. */
  public NewCookie look(UUID cluster, HttpServerRequest request) {
    return cookie(LOOK, cluster.toString(), request).build();
  }

  /** Looks into no other cluster any more. */
  public NewCookie lookNowhere(HttpServerRequest request) {
    return cookie(LOOK, "", request).maxAge(0).build();
  }

  /** Remembers for a year where somebody has signed in. */
  NewCookie home(UUID cluster, HttpServerRequest request) {
    return cookie(HOME, cluster.toString(), request).maxAge((int) YEAR.toSeconds()).build();
  }

  /** Forgets it, which means the first cluster. */
  NewCookie noHome(HttpServerRequest request) {
    return cookie(HOME, "", request).maxAge(0).build();
  }

  private NewCookie.Builder cookie(String name, String value, HttpServerRequest request) {
    return new NewCookie.Builder(name)
        .value(value)
        .path("/")
        .httpOnly(true)
        .sameSite(NewCookie.SameSite.LAX)
        .secure(session.isSecure(request));
  }
}
