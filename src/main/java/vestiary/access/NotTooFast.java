package vestiary.access;

import io.vertx.core.http.HttpServerRequest;
import jakarta.ws.rs.Priorities;
import jakarta.ws.rs.core.HttpHeaders;
import java.time.Duration;
import java.util.Optional;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;
import org.jboss.resteasy.reactive.server.spi.ResteasyReactiveContainerRequestContext;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/**
 * Keeps whoever asks faster than a person from slowing all others. Who has signed in is counted by
 * themselves, so that many may share one address, as behind a parish's router; strangers are
 * counted by address. The token of the server is its keeper's own and is not counted.
 *
 * <p>Source: RFC 6585, 4 (429 Too Many Requests).
 */
final class NotTooFast {

  private final Allowances allowances;
  private final CurrentVisitor current;
  private final CurrentCluster cluster;

  NotTooFast(Allowances allowances, CurrentVisitor current, CurrentCluster cluster) {
    this.allowances = allowances;
    this.current = current;
    this.cluster = cluster;
  }

  /** Before anything is read from the database for somebody who says nothing of themselves. */
  @ServerRequestFilter(priority = Priorities.AUTHENTICATION - 1)
  void countStranger(ResteasyReactiveContainerRequestContext request) {
    if (!saysWhoTheyAre(request)) {
      refuseAfter(allowances.findPauseOfAddress(address(request)));
    }
  }

  /** After the door, which knows whether it is true. */
  @ServerRequestFilter(priority = Priorities.AUTHENTICATION + 1)
  void countVisitor(ResteasyReactiveContainerRequestContext request) {
    Visitor visitor = current.visitor();
    if (visitor instanceof Visitor.KeeperOfServer) {
      return;
    }
    if (!(visitor instanceof Visitor.Nobody)) {
      refuseAfter(allowances.findPauseOfUser(cluster.id() + visitor.mark()));
    } else if (saysWhoTheyAre(request)) {
      refuseAfter(allowances.findPauseOfAddress(address(request)));
    }
  }

  private static void refuseAfter(Optional<Duration> pause) {
    pause.ifPresent(
        p -> {
          throw new Refused(new Refusal.TooFast(p));
        });
  }

  private static boolean saysWhoTheyAre(ResteasyReactiveContainerRequestContext request) {
    return request.getHeaderString(HttpHeaders.AUTHORIZATION) != null
        || request.getCookies().containsKey(SessionCookie.NAME)
        || request.getCookies().containsKey(SessionCookie.DEVICE);
  }

  private static String address(ResteasyReactiveContainerRequestContext request) {
    ResteasyReactiveRequestContext context =
        (ResteasyReactiveRequestContext) request.getServerRequestContext();
    HttpServerRequest asked = context.serverRequest().unwrap(HttpServerRequest.class);
    return asked.remoteAddress().hostAddress();
  }
}
