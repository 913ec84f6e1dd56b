package vestiary.problem;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.runtime.configuration.MemorySize;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.http.HttpServerResponse;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.io.UncheckedIOException;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import vestiary.web.PageAnswer;

/**
 * Says in words that a request is too large; the server's own answer to it is empty. A request that
 * does not tell its length beforehand, which no browser sends, still gets that one.
 */
@ApplicationScoped
class BodyLimit {

  private static final int FIRST_OF_ALL = 400;

  /** A browser shows an answer only once it has sent all; beyond this, waiting costs too much. */
  private static final int MOST_LISTENED_TO = 10;

  private final long limit;
  private final ProblemSheets sheets;
  private final ObjectMapper json;

  BodyLimit(
      @ConfigProperty(name = "quarkus.http.limits.max-body-size") MemorySize limit,
      ProblemSheets sheets,
      ObjectMapper json) {
    this.limit = limit.asLongValue();
    this.sheets = sheets;
    this.json = json;
  }

  void register(@Observes Filters filters) {
    filters.register(this::check, FIRST_OF_ALL);
  }

  /** What is said of a request that is too large. */
  Refusal refusal() {
    return new Refusal.TooLarge(limit);
  }

  private void check(RoutingContext routing) {
    HttpServerRequest request = routing.request();
    long length = length(request);
    if (length <= limit) {
      routing.next();
    } else if (length > limit * MOST_LISTENED_TO
        || request.headers().contains(HttpHeaders.EXPECT)) {
      refuse(routing);
    } else {
      request.handler(ignored -> {}).endHandler(end -> refuse(routing)).resume();
    }
  }

  private void refuse(RoutingContext routing) {
    HttpServerRequest request = routing.request();
    boolean isPage = ProblemAnswer.wantsPage(request.path(), accepted(request));
    HttpServerResponse response = routing.response();
    response
        .setStatusCode(refusal().status())
        .putHeader(HttpHeaders.CONNECTION, "close")
        .putHeader(HttpHeaders.CONTENT_TYPE, isPage ? PageAnswer.HTML : ProblemDocument.MEDIA_TYPE)
        .end(
            isPage
                ? sheets.render(refusal(), request.method().name(), request.path())
                : document(request.path()))
        .onComplete(told -> request.connection().close());
  }

  private String document(String path) {
    try {
      return json.writeValueAsString(ProblemDocument.from(refusal(), path));
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String accepted(HttpServerRequest request) {
    return String.valueOf(request.getHeader(HttpHeaders.ACCEPT));
  }

  /** What cannot be read as a length is left to the server, which refuses it. */
  private static long length(HttpServerRequest request) {
    String said = request.getHeader(HttpHeaders.CONTENT_LENGTH);
    return said == null || !said.matches("\\d{1,18}") ? 0 : Long.parseLong(said);
  }
}
