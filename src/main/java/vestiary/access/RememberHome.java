package vestiary.access;

import io.vertx.core.http.HttpServerRequest;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.NewCookie;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/**
 * Whoever signs in to another cluster than the first, by whatever way, is led to its sign-in page
 * from then on; whoever comes in or goes out looks nowhere else any more. Not in the demo, which is
 * to open with its first cluster for whoever tries it.
 */
final class RememberHome {

  private final DefaultCluster first;
  private final WhoAsks who;
  private final ClusterCookies cookies;

  RememberHome(DefaultCluster first, WhoAsks who, ClusterCookies cookies) {
    this.first = first;
    this.who = who;
    this.cookies = cookies;
  }

  @ServerResponseFilter
  void remember(
      ContainerRequestContext request,
      ContainerResponseContext answer,
      HttpServerRequest connection) {
    Optional<String> session =
        Optional.ofNullable(answer.getCookies().get(SessionCookie.NAME)).map(NewCookie::getValue);
    session
        .filter(value -> request.getCookies().containsKey(ClusterCookies.LOOK))
        .ifPresent(value -> add(answer, cookies.lookNowhere(connection)));
    session
        .filter(value -> !value.isEmpty())
        .flatMap(Secret::parse)
        .flatMap(secret -> home(secret.cluster(), request, connection))
        .ifPresent(cookie -> add(answer, cookie));
  }

  private static void add(ContainerResponseContext answer, NewCookie cookie) {
    answer.getHeaders().add(HttpHeaders.SET_COOKIE, cookie);
  }

  private Optional<NewCookie> home(
      UUID cluster, ContainerRequestContext request, HttpServerRequest connection) {
    if (!cluster.equals(first.id())) {
      return who.isDemo() ? Optional.empty() : Optional.of(cookies.home(cluster, connection));
    }
    return request.getCookies().containsKey(ClusterCookies.HOME)
        ? Optional.of(cookies.noHome(connection))
        : Optional.empty();
  }
}
