package vestiary.problem;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import vestiary.web.PageAnswer;
import vestiary.web.PageLanguage;

/** Writes a refusal as a problem document, or as a page for somebody with a browser. */
@ApplicationScoped
class ProblemAnswer {

  private final ProblemSheets sheets;
  private final PageLanguage language;

  ProblemAnswer(ProblemSheets sheets, PageLanguage language) {
    this.sheets = sheets;
    this.language = language;
  }

  Response to(Refusal refusal, ContainerRequestContext request) {
    if (!sheets.canRead(refusal)) {
      language.readNothing();
    }
    String path = request.getUriInfo().getPath();
    String accepted = String.valueOf(request.getHeaderString(HttpHeaders.ACCEPT));
    return wantsPage(path, accepted)
        ? answer(refusal, PageAnswer.HTML, sheets.render(refusal, request.getMethod(), path))
        : answer(refusal, ProblemDocument.MEDIA_TYPE, ProblemDocument.from(refusal, path));
  }

  private static Response answer(Refusal refusal, String mediaType, Object entity) {
    Response.ResponseBuilder answer =
        Response.status(refusal.status()).type(mediaType).entity(entity);
    if (refusal instanceof Refusal.SignInFirst) {
      answer.header(HttpHeaders.WWW_AUTHENTICATE, "Bearer");
    }
    refusal
        .findPause()
        .ifPresent(pause -> answer.header(HttpHeaders.RETRY_AFTER, Math.max(1, pause.toSeconds())));
    return answer.build();
  }

  /** Programs have rooms of their own, and elsewhere a browser says that it takes HTML. */
  static boolean wantsPage(String path, String accepted) {
    String room = path.split("/", 3)[1];
    return !room.equals("api") && !room.equals("q") && accepted.contains(MediaType.TEXT_HTML);
  }
}
