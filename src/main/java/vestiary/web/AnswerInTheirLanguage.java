package vestiary.web;

import io.quarkus.qute.EngineBuilder;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.Cookie;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import java.util.Locale;
import java.util.Optional;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** Notes in which language a request is to be answered, and says in which one it is. */
@ApplicationScoped
class AnswerInTheirLanguage {

  private final PageLanguage language;

  AnswerInTheirLanguage(PageLanguage language) {
    this.language = language;
  }

  void speak(@Observes EngineBuilder engine) {
    engine.addTemplateInstanceInitializer(page -> Speech.locale().ifPresent(page::setLocale));
  }

  @ServerRequestFilter(preMatching = true)
  void ask(ContainerRequestContext request) {
    Cookie chosen = request.getCookies().get(Written.COOKIE);
    language.ask(
        chosen == null ? "" : chosen.getValue(),
        Optional.ofNullable(request.getHeaderString(HttpHeaders.ACCEPT_LANGUAGE)).orElse(""));
  }

  @ServerResponseFilter
  void tell(ContainerResponseContext answer) {
    boolean isPage =
        answer.getMediaType() != null
            && answer.getMediaType().isCompatible(MediaType.TEXT_HTML_TYPE)
            && answer.hasEntity();
    if (isPage) {
      answer.getHeaders().putSingle(HttpHeaders.CONTENT_LANGUAGE, of(answer).toLanguageTag());
      answer.getHeaders().add(HttpHeaders.VARY, "Cookie, Accept-Language");
    }
  }

  private Locale of(ContainerResponseContext answer) {
    Object own =
        answer.getEntity() instanceof TemplateInstance page
            ? page.getAttribute(TemplateInstance.LOCALE)
            : null;
    return own instanceof Locale named ? named : language.locale();
  }
}
