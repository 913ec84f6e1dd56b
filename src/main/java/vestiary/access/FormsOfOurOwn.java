package vestiary.access;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Optional;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jboss.resteasy.reactive.server.WithFormRead;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;
import org.jboss.resteasy.reactive.server.core.multipart.FormData;
import org.jboss.resteasy.reactive.server.multipart.FormValue;
import org.jboss.resteasy.reactive.server.spi.ResteasyReactiveContainerRequestContext;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/**
 * What comes with a session's cookie and changes something must come from a form that this server
 * gave to that session: another site can make a browser send a form, cookie and all, but cannot
 * know the form's token. What comes with a token of the API needs none, since no site can make a
 * browser send that.
 *
 * <p>Source: OWASP Cross-Site Request Forgery Prevention Cheat Sheet, "HMAC-based token pattern".
 */
final class FormsOfOurOwn {

  private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");

  /** The script of the pages sends it so. */
  private static final String HEADER = "X-Form-Token";

  /** A browser says so itself, and no page can make it lie (W3C Fetch Metadata). */
  private static final Set<String> OUR_SITE = Set.of("same-origin", "none");

  private final CurrentVisitor current;

  FormsOfOurOwn(CurrentVisitor current) {
    this.current = current;
  }

  @WithFormRead
  @ServerRequestFilter
  void check(ResteasyReactiveContainerRequestContext request) {
    if (READING.contains(request.getMethod())) {
      return;
    }
    String site = Optional.ofNullable(request.getHeaderString("Sec-Fetch-Site")).orElse("none");
    String token = current.formToken();
    boolean isOurs = OUR_SITE.contains(site) && (token.isEmpty() || isSame(token, sent(request)));
    if (!isOurs) {
      throw new Refused(new Refusal.StaleForm());
    }
  }

  private static String sent(ResteasyReactiveContainerRequestContext request) {
    return Optional.ofNullable(request.getHeaderString(HEADER)).orElseGet(() -> field(request));
  }

  private static String field(ResteasyReactiveContainerRequestContext request) {
    FormData form =
        ((ResteasyReactiveRequestContext) request.getServerRequestContext()).getFormData();
    return Optional.ofNullable(form)
        .map(f -> f.getFirst(FormToken.FIELD))
        .filter(value -> !value.isFileItem())
        .map(FormValue::getValue)
        .orElse("");
  }

  private static boolean isSame(String known, String sent) {
    return MessageDigest.isEqual(
        known.getBytes(StandardCharsets.UTF_8), sent.getBytes(StandardCharsets.UTF_8));
  }
}
