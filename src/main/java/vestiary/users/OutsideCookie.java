package vestiary.users;

import io.vertx.core.http.HttpServerRequest;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.NewCookie;
import vestiary.access.Secret;
import vestiary.access.SessionCookie;

/** The cookie that ties a way to another service and back to one browser. */
@ApplicationScoped
class OutsideCookie {

  static final String NAME = "vestiary-outside";

  private final SessionCookie session;

  OutsideCookie(SessionCookie session) {
    this.session = session;
  }

  NewCookie of(Secret way, HttpServerRequest request) {
    return cookie(way.text(), (int) EnterByProvider.GOOD_FOR.toSeconds(), request);
  }

  NewCookie gone(HttpServerRequest request) {
    return cookie("", 0, request);
  }

  /** Lax, since the browser comes back from another site. */
  private NewCookie cookie(String value, int seconds, HttpServerRequest request) {
    return new NewCookie.Builder(NAME)
        .value(value)
        .path("/sign-in/outside")
        .httpOnly(true)
        .sameSite(NewCookie.SameSite.LAX)
        .secure(session.isSecure(request))
        .maxAge(seconds)
        .build();
  }
}
