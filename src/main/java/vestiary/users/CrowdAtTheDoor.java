package vestiary.users;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpMethod;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import vestiary.web.Frame;
import vestiary.web.PageAnswer;

/**
 * Sends strangers away while too many of them try passwords, before the server reads what they
 * sent, so that a crowd takes next to nothing from those who have come in. A browser that somebody
 * came in by before does not stand in that crowd.
 */
@ApplicationScoped
class CrowdAtTheDoor {

  /** Before the form is read, after what belongs in every answer. */
  private static final int BEFORE_READING = 300;

  private final Passwords passwords;
  private volatile Buffer page;

  CrowdAtTheDoor(Passwords passwords) {
    this.passwords = passwords;
  }

  @CheckedTemplate(basePath = "users")
  static class Templates {
    private Templates() {}

    static native TemplateInstance crowd(Frame frame);
  }

  void register(@Observes Filters filters) {
    filters.register(this::look, BEFORE_READING);
  }

  private void look(RoutingContext routing) {
    HttpServerRequest request = routing.request();
    boolean isStranger =
        request.method().equals(HttpMethod.POST)
            && request.path().equals("/sign-in")
            && request.getCookie(DeviceCookie.NAME) == null;
    if (!isStranger || !passwords.isCrowded()) {
      routing.next();
      return;
    }
    routing
        .response()
        .setStatusCode(429)
        .putHeader("Retry-After", Long.toString(Turns.LONGEST_WAIT.toSeconds()))
        .putHeader(HttpHeaders.CONTENT_TYPE, PageAnswer.HTML)
        .end(page());
  }

  /** The same for all, so it is made once; should two make it at once, either is good. */
  private Buffer page() {
    Buffer known = page;
    if (known == null) {
      known = Buffer.buffer(Templates.crowd(Frame.empty()).render());
      page = known;
    }
    return known;
  }
}
