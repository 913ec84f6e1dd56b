package vestiary.access;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.HttpHeaders;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/**
 * Tells browsers, and whatever stands before the server, that nothing of a cluster is kept for
 * others. A page of the schedule may lie in the reader's own browser as long as it asks again; what
 * is said of people, and links and tokens that are shown once, may not lie there at all.
 *
 * <p>Source: RFC 9111, 5.2.2; OWASP Session Management Cheat Sheet, "Web Content Caching".
 */
final class KeptNowhere {

  private static final Set<String> OF_PEOPLE =
      Set.of(
          "account",
          "api",
          "devices",
          "history",
          "letters",
          "mail",
          "mine",
          "people",
          "recovery",
          "sign-in",
          "users",
          "welcome");

  /** Where sessions end; whoever sits down next sees nothing by going back. */
  private static final Set<String> LEAVING = Set.of("/sign-out", "/account/sessions/end");

  @ServerResponseFilter
  void say(ContainerRequestContext request, ContainerResponseContext answer) {
    String path = request.getUriInfo().getPath();
    String room = path.replaceFirst("^/+", "").split("/", 2)[0];
    answer
        .getHeaders()
        .putSingle(
            HttpHeaders.CACHE_CONTROL, OF_PEOPLE.contains(room) ? "no-store" : "private, no-cache");
    if (LEAVING.contains(path)) {
      answer.getHeaders().putSingle("Clear-Site-Data", "\"cache\", \"storage\"");
    }
  }
}
