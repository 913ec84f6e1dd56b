package vestiary.access;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;

/**
 * Where people reach the server by https, browsers are told to come by no other way for a year.
 *
 * <p>Source: RFC 6797, HTTP Strict Transport Security.
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
      routing.response().putHeader("Strict-Transport-Security", "max-age=31536000");
    }
    routing.next();
  }
}
