package vestiary.problem;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;

/** Writes a refusal as a problem document. */
@ApplicationScoped
class ProblemAnswer {

  Response to(Refusal refusal, UriInfo uri, HttpHeaders headers) {
    return Response.status(refusal.status())
        .type(ProblemDocument.MEDIA_TYPE)
        .entity(ProblemDocument.from(refusal, uri.getPath()))
        .build();
  }
}
