package vestiary.sentonce;

import static vestiary.web.Speech.say;

import jakarta.ws.rs.Priorities;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;
import org.jboss.resteasy.reactive.server.core.CurrentRequestManager;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;
import vestiary.access.CurrentCluster;
import vestiary.access.CurrentVisitor;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/**
 * Answers a form that is sent again as it was answered the first time, and carries it out once. The
 * browser's script gives each sending a key of its own; a form without one is sent as ever.
 *
 * <p>Source: IETF draft "The Idempotency-Key HTTP Header Field".
 */
final class AnswerOnce {

  static final String HEADER = "Idempotency-Key";

  private static final String KEY = "vestiary.sentonce.key";
  private static final String FORM_OF_A_KEY = "[0-9a-f]{32}";
  private static final int SECONDS_TO_WAIT = 3;
  private static final int FIRST_REFUSAL = 400;
  private static final int FIRST_REDIRECTION = 300;

  private final SentForms forms;
  private final CurrentVisitor visitor;
  private final CurrentCluster cluster;

  AnswerOnce(SentForms forms, CurrentVisitor visitor, CurrentCluster cluster) {
    this.forms = forms;
    this.visitor = visitor;
    this.cluster = cluster;
  }

  /** The answer of the first time, or {@code null} to let the request go on. */
  @ServerRequestFilter(priority = Priorities.USER + 100)
  Response ask(ContainerRequestContext request) {
    Optional<String> key = key(request);
    if (key.isEmpty()) {
      return null;
    }
    SentForms.Known known = forms.begin(key.get());
    if (known instanceof SentForms.Known.Answered answered) {
      return Response.seeOther(URI.create(answered.leadsTo())).build();
    }
    if (known instanceof SentForms.Known.Working) {
      return Response.status(Response.Status.CONFLICT)
          .header(HttpHeaders.RETRY_AFTER, SECONDS_TO_WAIT)
          .build();
    }
    if (known instanceof SentForms.Known.Unknown) {
      throw new Refused(
          new Refusal.Taken(
              "",
              say(
                  "This was sent before, and the server was stopped meanwhile. Look whether it is there; if it is not, enter it once more.")));
    }
    request.setProperty(KEY, key.get());
    noteEvenIfCutOff(request, key.get());
    return null;
  }

  /** Before it is answered, so that whoever has the answer and sends again is answered alike. */
  @ServerResponseFilter
  void note(ContainerRequestContext request, ContainerResponseContext response) {
    if (request.getProperty(KEY) instanceof String key) {
      request.removeProperty(KEY);
      forms.end(key, leadsTo(response.getStatus(), response.getLocation()));
    }
  }

  /** An answer that nobody is there to take any more passes no filter. */
  private void noteEvenIfCutOff(ContainerRequestContext request, String key) {
    UUID here = cluster.id();
    ResteasyReactiveRequestContext context = CurrentRequestManager.get();
    context.registerCompletionCallback(
        failure -> {
          if (request.getProperty(KEY) != null) {
            forms.endAfterwards(here, key, leadsTo(context.getResult()));
          }
        });
  }

  private static Optional<String> leadsTo(Object result) {
    return result instanceof Response answer
        ? leadsTo(answer.getStatus(), answer.getLocation())
        : Optional.empty();
  }

  private static Optional<String> leadsTo(int status, URI location) {
    boolean ledOn = status >= FIRST_REDIRECTION && status < FIRST_REFUSAL;
    return ledOn ? Optional.ofNullable(location).map(AnswerOnce::way) : Optional.empty();
  }

  /** Path and query alone: the host is whatever the browser came by. */
  private static String way(URI location) {
    String query = location.getRawQuery();
    return location.getRawPath() + (query == null ? "" : "?" + query);
  }

  /** One hash of what is sent, where to and by whom; empty for what is no form with a key. */
  private Optional<String> key(ContainerRequestContext request) {
    String given = Optional.ofNullable(request.getHeaderString(HEADER)).orElse("");
    // As it was sent: what is no media type at all would fail to be read as one.
    String type = Optional.ofNullable(request.getHeaderString(HttpHeaders.CONTENT_TYPE)).orElse("");
    boolean isForm =
        request.getMethod().equals("POST")
            && type.strip()
                .toLowerCase(Locale.ROOT)
                .startsWith(MediaType.APPLICATION_FORM_URLENCODED);
    return isForm && given.matches(FORM_OF_A_KEY)
        ? Optional.of(
            hash(visitor.visitor().mark() + "|" + request.getUriInfo().getPath() + "|" + given))
        : Optional.empty();
  }

  private static String hash(String text) {
    try {
      return HexFormat.of()
          .formatHex(
              MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
