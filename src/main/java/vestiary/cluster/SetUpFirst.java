package vestiary.cluster;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/**
 * Leads whoever opens a page of a cluster that nobody has set up to the page where that is done.
 * Lists and churches can be entered before, and the API is left alone.
 */
final class SetUpFirst {

  private static final Set<String> OPEN_BEFORE =
      Set.of(
          "setup",
          "import",
          "churches",
          "problems",
          "api",
          "q",
          "sign-in",
          "welcome",
          "account",
          "users");

  private final ReadCluster cluster;

  SetUpFirst(ReadCluster cluster) {
    this.cluster = cluster;
  }

  /** The redirect, or {@code null} to let the request go on, as the framework wants it. */
  @ServerRequestFilter
  Response redirect(ContainerRequestContext request) {
    boolean isPage = request.getMethod().equals("GET") && !OPEN_BEFORE.contains(room(request));
    return isPage && !cluster.isSetUp() ? Response.seeOther(URI.create("/setup")).build() : null;
  }

  private static String room(ContainerRequestContext request) {
    return request.getUriInfo().getPath().split("/", 3)[1];
  }
}
