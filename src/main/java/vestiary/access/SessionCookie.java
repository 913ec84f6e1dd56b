package vestiary.access;

import io.vertx.core.http.HttpServerRequest;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.NewCookie;
import java.time.Duration;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * The cookie that holds a session. No script reads it, no other site's form sends it, and where the
 * server is reached by https it never travels in the clear.
 */
@ApplicationScoped
public class SessionCookie {

  static final String NAME = "vestiary-session";

  /** Of a shared device; it stays when somebody signs in on it and out again. */
  static final String DEVICE = "vestiary-shared-device";

  /** The longest that browsers keep one (RFC 6265bis, section 5.5). */
  private static final Duration LONGEST = Duration.ofDays(400);

  private final boolean publicAddressIsSecure;

  SessionCookie(@ConfigProperty(name = "vestiary.public-url") Optional<String> publicAddress) {
    this.publicAddressIsSecure = publicAddress.filter(a -> a.startsWith("https:")).isPresent();
  }

  /** As long as the browser stays open. */
  public NewCookie of(Secret session, HttpServerRequest request) {
    return cookie(session.text(), request).build();
  }

  /** So long, whether or not the browser is closed in between. */
  public NewCookie of(Secret session, Duration lasting, HttpServerRequest request) {
    return cookie(session.text(), request).maxAge((int) lasting.toSeconds()).build();
  }

  /** For a device that stays signed in; to be sent anew now and then. */
  public NewCookie ofDevice(Secret device, HttpServerRequest request) {
    return new NewCookie.Builder(DEVICE)
        .value(device.text())
        .path("/")
        .httpOnly(true)
        .sameSite(NewCookie.SameSite.LAX)
        .secure(isSecure(request))
        .maxAge((int) LONGEST.toSeconds())
        .build();
  }

  /** Takes it away. */
  public NewCookie gone(HttpServerRequest request) {
    return cookie("", request).maxAge(0).build();
  }

  /** Whether people reach the server by https, as far as can be known behind a proxy. */
  public boolean isSecure(HttpServerRequest request) {
    return publicAddressIsSecure || request.isSSL();
  }

  private NewCookie.Builder cookie(String value, HttpServerRequest request) {
    return new NewCookie.Builder(NAME)
        .value(value)
        .path("/")
        .httpOnly(true)
        .sameSite(NewCookie.SameSite.LAX)
        .secure(isSecure(request));
  }
}
