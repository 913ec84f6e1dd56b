package vestiary.problem;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;

/** Writes a refusal as a problem document, or as a page for somebody with a browser. */
@ApplicationScoped
class ProblemAnswer {

  private final ProblemSheets sheets;

  ProblemAnswer(ProblemSheets sheets) {
    this.sheets = sheets;
  }

  Response to(Refusal refusal, UriInfo uri, HttpHeaders headers) {
    return wantsPage(uri.getPath(), headers) ? page(refusal, uri) : document(refusal, uri);
  }

  private Response page(Refusal refusal, UriInfo uri) {
    return Response.status(refusal.status())
        .type(MediaType.TEXT_HTML + ";charset=UTF-8")
        .entity(sheets.render(refusal, uri.getPath()))
        .build();
  }

  private static Response document(Refusal refusal, UriInfo uri) {
    return Response.status(refusal.status())
        .type(ProblemDocument.MEDIA_TYPE)
        .entity(ProblemDocument.from(refusal, uri.getPath()))
        .build();
  }

  private static boolean wantsPage(String path, HttpHeaders headers) {
    return !isForPrograms(path)
        && headers.getAcceptableMediaTypes().stream()
            .anyMatch(type -> type.getType().equals("text") && type.getSubtype().equals("html"));
  }

  static boolean isForPrograms(String path) {
    String room = path.split("/", 3)[1];
    return room.equals("api") || room.equals("q");
  }
}
