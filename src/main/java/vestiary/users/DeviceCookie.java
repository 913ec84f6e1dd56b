package vestiary.users;

import io.vertx.core.http.HttpServerRequest;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.NewCookie;
import vestiary.access.Secret;
import vestiary.access.SessionCookie;

/** The cookie by which a browser is known again. It outlasts going out, and lets nobody in. */
@ApplicationScoped
class DeviceCookie {

  static final String NAME = "vestiary-device";

  private final SessionCookie session;

  DeviceCookie(SessionCookie session) {
    this.session = session;
  }

  NewCookie of(Secret device, HttpServerRequest request) {
    return new NewCookie.Builder(NAME)
        .value(device.text())
        .path("/sign-in")
        .httpOnly(true)
        .sameSite(NewCookie.SameSite.LAX)
        .secure(session.isSecure(request))
        .maxAge((int) KnownDevices.KNOWN_FOR.toSeconds())
        .build();
  }
}
