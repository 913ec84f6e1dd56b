package vestiary.access;

import io.quarkus.arc.Arc;
import io.quarkus.arc.ManagedContext;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Optional;
import vestiary.problem.Refused;

/**
 * Keeps the framework's own addresses, such as its measurements, from whoever may not look. Health
 * alone is told to everybody: what watches over the server has no token.
 */
@ApplicationScoped
class BackRooms {

  private static final int EARLY = 300;
  private static final String ROOMS = "/q/";
  private static final String HEALTH = "/q/health";

  private final Identify identify;
  private final CurrentVisitor current;
  private final WhoAsks who;

  BackRooms(Identify identify, CurrentVisitor current, WhoAsks who) {
    this.identify = identify;
    this.current = current;
    this.who = who;
  }

  void register(@Observes Filters filters) {
    filters.register(this::check, EARLY);
  }

  private void check(RoutingContext routing) {
    String path = routing.normalizedPath();
    if (!path.startsWith(ROOMS) || path.startsWith(HEALTH)) {
      routing.next();
      return;
    }
    routing.request().pause();
    routing
        .vertx()
        .executeBlocking(() -> mayLook(routing), false)
        .onComplete(
            answer -> {
              routing.request().resume();
              if (answer.failed()) {
                routing.response().setStatusCode(503).end();
              } else if (answer.result()) {
                routing.next();
              } else {
                routing.response().setStatusCode(401).putHeader("WWW-Authenticate", "Bearer").end();
              }
            });
  }

  private boolean mayLook(RoutingContext routing) {
    ManagedContext request = Arc.container().requestContext();
    request.activate();
    try {
      identify.identify(
          Wish.of(
              Optional.ofNullable(routing.request().getHeader(HttpHeaders.AUTHORIZATION))
                  .orElse(""),
              cookie(routing, SessionCookie.NAME),
              cookie(routing, SessionCookie.DEVICE)));
      return current.visitor().may(Action.LOOK) || who.isDemo();
    } catch (Refused refused) {
      return false;
    } finally {
      request.terminate();
    }
  }

  private static String cookie(RoutingContext routing, String name) {
    return Optional.ofNullable(routing.request().getCookie(name))
        .map(cookie -> cookie.getValue())
        .orElse("");
  }
}
