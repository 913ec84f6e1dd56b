package vestiary.access;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.Cookie;
import jakarta.ws.rs.core.HttpHeaders;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * What a request brings along to say who makes it and in which cluster; all of it may be empty.
 *
 * @param authorization the header of that name
 * @param session the cookie of a session
 * @param device the cookie of a shared device
 * @param secrets links that the address holds; of use only where nobody need sign in
 * @param place word of the cluster in which somebody wants to sign in; of use only there
 * @param home id of the cluster in which somebody last signed in on this device
 * @param key of a feed; of use only where one opens
 * @param look word or id of the cluster into which an overseer looks
 */
record Wish(
    String authorization,
    String session,
    String device,
    List<Secret> secrets,
    String place,
    String home,
    String key,
    String look) {

  /** The name of a program's header that says into which cluster it looks. */
  static final String LOOK = "Vestiary-Cluster";

  private static final String PLACE = "cluster";
  private static final String LINK = "link";
  private static final String KEY = "key";

  Wish {
    secrets = List.copyOf(secrets);
  }

  /** One that says nothing of clusters. */
  static Wish of(String authorization, String session, String device) {
    return new Wish(authorization, session, device, List.of(), "", "", "", "");
  }

  /**
   * That of a request.
   *
   * @param isOpen whether it is for an address that nobody need sign in for
   * @param isFeed whether it is for one that a key opens
   */
  static Wish of(ContainerRequestContext request, boolean isOpen, boolean isFeed) {
    Stream<String> links =
        isOpen
            ? request.getUriInfo().getPathParameters().getOrDefault(LINK, List.of()).stream()
            : Stream.empty();
    String place = asked(request, PLACE);
    return new Wish(
        header(request, HttpHeaders.AUTHORIZATION),
        cookie(request, SessionCookie.NAME),
        cookie(request, SessionCookie.DEVICE),
        links.flatMap(link -> Secret.parse(link).stream()).toList(),
        isOpen ? place : "",
        cookie(request, ClusterCookies.HOME),
        isFeed ? asked(request, KEY) : "",
        isOpen ? "" : look(request));
  }

  private static String look(ContainerRequestContext request) {
    String named = header(request, LOOK);
    String chosen = cookie(request, ClusterCookies.LOOK);
    return named.isEmpty() && isId(chosen) ? chosen : named;
  }

  private static boolean isId(String text) {
    try {
      return UUID.fromString(text).toString().equals(text);
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  private static String asked(ContainerRequestContext request, String name) {
    return Optional.ofNullable(request.getUriInfo().getQueryParameters().getFirst(name)).orElse("");
  }

  private static String header(ContainerRequestContext request, String name) {
    return Optional.ofNullable(request.getHeaderString(name)).orElse("");
  }

  private static String cookie(ContainerRequestContext request, String name) {
    return Optional.ofNullable(request.getCookies().get(name)).map(Cookie::getValue).orElse("");
  }
}
