package vestiary.problem;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.runtime.configuration.MemorySize;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Refuses what is too large before it is read, as every refusal is told; left to itself, the
 * framework hangs up without a word.
 */
@ApplicationScoped
class TooLarge {

  private static final int BEFORE_ALL_OTHERS = 10_000;
  private static final Refusal REFUSAL =
      new Refusal.Unreadable(413, "Too large", "The request is larger than 8 MB; split it.");

  private final long most;
  private final ObjectMapper json;

  TooLarge(
      @ConfigProperty(name = "quarkus.http.limits.max-body-size") MemorySize most,
      ObjectMapper json) {
    this.most = most.asLongValue();
    this.json = json;
  }

  void watch(@Observes Filters filters) {
    filters.register(this::look, BEFORE_ALL_OTHERS);
  }

  private void look(RoutingContext request) {
    String length = request.request().getHeader(HttpHeaders.CONTENT_LENGTH);
    if (length == null || !length.matches("\\d{1,18}") || Long.parseLong(length) <= most) {
      request.next();
      return;
    }
    request
        .response()
        .setStatusCode(REFUSAL.status())
        .putHeader(HttpHeaders.CONTENT_TYPE, ProblemDocument.MEDIA_TYPE)
        .putHeader(HttpHeaders.CONNECTION, "close")
        .end(document(request.request().path()))
        .onComplete(told -> request.request().connection().close());
  }

  private String document(String path) {
    try {
      return json.writeValueAsString(ProblemDocument.from(REFUSAL, path));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a problem document can always be written", e);
    }
  }
}
