package vestiary.problem;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import vestiary.web.PageAnswer;

/** Writes a refusal as a problem document, or as a page for somebody with a browser. */
@ApplicationScoped
class ProblemAnswer {

  private final ProblemSheets sheets;

  ProblemAnswer(ProblemSheets sheets) {
    this.sheets = sheets;
  }

  Response to(Refusal refusal, UriInfo uri, HttpHeaders headers) {
    String accepted = String.valueOf(headers.getHeaderString(HttpHeaders.ACCEPT));
    return wantsPage(uri.getPath(), accepted) ? page(refusal, uri) : document(refusal, uri);
  }

  private Response page(Refusal refusal, UriInfo uri) {
    return Response.status(refusal.status())
        .type(PageAnswer.HTML)
        .entity(sheets.render(refusal, uri.getPath()))
        .build();
  }

  private static Response document(Refusal refusal, UriInfo uri) {
    return Response.status(refusal.status())
        .type(ProblemDocument.MEDIA_TYPE)
        .entity(ProblemDocument.from(refusal, uri.getPath()))
        .build();
  }

  /** Programs have rooms of their own, and elsewhere a browser says that it takes HTML. */
  static boolean wantsPage(String path, String accepted) {
    String room = path.split("/", 3)[1];
    return !room.equals("api") && !room.equals("q") && accepted.contains(MediaType.TEXT_HTML);
  }
}
