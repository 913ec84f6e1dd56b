package vestiary.access;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import jakarta.ws.rs.Priorities;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ResourceInfo;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriBuilder;
import jakarta.ws.rs.core.UriInfo;
import java.util.Optional;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Lets a request through to its page or resource if its maker may do what that does. */
final class Door {

  private static final Set<String> READING = Set.of("GET", "HEAD");

  private static final String NOT_YOURS =
      word(
          "Your role does not let you do this, so nothing was changed. Whoever keeps the users of your cluster can give you another.");

  private final Identify identify;
  private final CurrentVisitor current;
  private final WhoAsks who;

  Door(Identify identify, CurrentVisitor current, WhoAsks who) {
    this.identify = identify;
    this.current = current;
    this.who = who;
  }

  /** The way to sign in, or {@code null} to let the request go on, as the framework wants it. */
  @ServerRequestFilter(priority = Priorities.AUTHENTICATION)
  Response open(ContainerRequestContext request, ResourceInfo target) {
    boolean isOpen = Asks.isOpenToAll(target);
    identify.identify(Wish.of(request, isOpen, Asks.isOpenByKey(target)));
    if (isOpen || mayPass(Asks.action(target), request)) {
      return null;
    }
    if (current.visitor() instanceof Visitor.Nobody) {
      return signInFirst(request);
    }
    throw new Refused(new Refusal.NotAllowed(NOT_YOURS));
  }

  private boolean mayPass(Action action, ContainerRequestContext request) {
    return current.visitor().may(action)
        || action == Action.LOOK && READING.contains(request.getMethod()) && who.isDemo();
  }

  private static Response signInFirst(ContainerRequestContext request) {
    UriInfo address = request.getUriInfo();
    boolean isPage =
        header(request, HttpHeaders.ACCEPT).contains(MediaType.TEXT_HTML)
            && !address.getPath().startsWith("/api/");
    if (isPage && isTypedOnOurPage(request)) {
      // The browser sends the same form once more, to where it is kept until somebody has come in.
      return Response.temporaryRedirect(
              UriBuilder.fromPath("/sign-in/kept")
                  .queryParam("at", "{at}")
                  .build(address.getPath()))
          .build();
    }
    if (!isPage || !READING.contains(request.getMethod())) {
      throw new Refused(
          new Refusal.SignInFirst(
              say(
                  "Sign in first, or send a token as Authorization: Bearer. Nothing was changed.")));
    }
    String back = address.getRequestUri().getRawPath() + query(address);
    return Response.seeOther(
            UriBuilder.fromPath("/sign-in").queryParam("back", "{back}").build(back))
        .build();
  }

  /** The browser itself says whose page a form was on (W3C Fetch Metadata). */
  private static boolean isTypedOnOurPage(ContainerRequestContext request) {
    return request.getMethod().equals("POST")
        && header(request, "Sec-Fetch-Site").equals("same-origin")
        && header(request, HttpHeaders.CONTENT_TYPE)
            .startsWith(MediaType.APPLICATION_FORM_URLENCODED);
  }

  private static String query(UriInfo address) {
    String query = address.getRequestUri().getRawQuery();
    return query == null ? "" : "?" + query;
  }

  private static String header(ContainerRequestContext request, String name) {
    return Optional.ofNullable(request.getHeaderString(name)).orElse("");
  }
}
