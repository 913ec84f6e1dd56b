package vestiary.access;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;

/**
 * Where people reach the server by https, browsers are told to come by no other way for a year, and
 * to fetch whatever belongs to a page so, too.
 *
 * <p>Source: RFC 6797, HTTP Strict Transport Security; W3C Upgrade Insecure Requests; values: OWASP
 * Secure Headers Project, best practices.
 */
@ApplicationScoped
class OnlyByHttps {

  private static final int EARLY = 350;

  private final SessionCookie cookie;

  OnlyByHttps(SessionCookie cookie) {
    this.cookie = cookie;
  }

  void register(@Observes Filters filters) {
    filters.register(this::say, EARLY);
  }

  private void say(RoutingContext routing) {
    if (cookie.isSecure(routing.request())) {
      routing
          .response()
          .putHeader("Strict-Transport-Security", "max-age=31536000; includeSubDomains")
          .headers()
          .add("Content-Security-Policy", "upgrade-insecure-requests");
    }
    routing.next();
  }
}
