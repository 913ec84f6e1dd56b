package vestiary.problem;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;

/** The one place where something that was thrown becomes an answer. */
final class ProblemMapper {

  private static final Logger LOG = Logger.getLogger(ProblemMapper.class);

  private final ProblemAnswer answer;

  ProblemMapper(ProblemAnswer answer) {
    this.answer = answer;
  }

  @ServerExceptionMapper
  Response refused(Refused refused, UriInfo uri, HttpHeaders headers) {
    return answer.to(refused.refusal(), uri, headers);
  }

  @ServerExceptionMapper
  Response unreadable(WebApplicationException failure, UriInfo uri, HttpHeaders headers) {
    int status = failure.getResponse().getStatus();
    if (status < 400) {
      return failure.getResponse();
    }
    return answer.to(refusal(failure, status, uri), uri, headers);
  }

  @ServerExceptionMapper
  Response failed(Throwable failure, UriInfo uri, HttpHeaders headers) {
    Refusal refusal =
        DatabaseRefusals.find(failure)
            .orElseGet(
                () -> {
                  String reference = UUID.randomUUID().toString().substring(0, 8);
                  LOG.errorf(failure, "Fault %s at %s", reference, uri.getPath());
                  return new Refusal.Fault(reference);
                });
    return answer.to(refusal, uri, headers);
  }

  /** What the framework decodes before anything of ours is asked, it throws as it comes. */
  @ServerExceptionMapper
  Response undecodable(IllegalArgumentException failure, UriInfo uri, HttpHeaders headers) {
    if (!String.valueOf(failure.getMessage()).startsWith("URLDecoder")) {
      return failed(failure, uri, headers);
    }
    return answer.to(
        new Refusal.Unreadable(
            400,
            ProblemKind.UNREADABLE_REQUEST.title(),
            "After each % in what was sent, two digits from 0 to F must follow."),
        uri,
        headers);
  }

  private static Refusal refusal(WebApplicationException failure, int status, UriInfo uri) {
    Throwable cause = failure.getCause();
    if (cause instanceof JsonMappingException json && !json.getPath().isEmpty()) {
      return Refusal.Unfit.of(
          path(json), "%s cannot be read: %s.".formatted(path(json), said(json)));
    }
    if (cause instanceof JsonProcessingException json) {
      return new Refusal.Unreadable(
          400, "Not JSON", "The request's body is no JSON: " + json.getOriginalMessage() + ".");
    }
    return switch (status) {
      case 404 -> new Refusal.NotThere("page", uri.getPath());
      case 405 ->
          new Refusal.Unreadable(
              405, "Not possible here", "This address does not take that kind of request.");
      case 406 ->
          new Refusal.Unreadable(
              406,
              "Not in that form",
              "This address does not answer in the form that is asked for.");
      case 413 ->
          new Refusal.Unreadable(413, "Too large", "The request is larger than 8 MB; split it.");
      case 415 ->
          new Refusal.Unreadable(
              415, "Wrong kind of content", "Send application/json, or use the form on the page.");
      default ->
          new Refusal.Unreadable(
              status, "The request cannot be read", "The request cannot be read as it stands.");
    };
  }

  private static String path(JsonMappingException json) {
    return json.getPath().stream()
        .map(r -> r.getFieldName() == null ? String.valueOf(r.getIndex()) : r.getFieldName())
        .collect(Collectors.joining("."));
  }

  /** The first sentence alone: what follows names Java types. */
  private static String said(JsonMappingException json) {
    String message = json.getOriginalMessage();
    int target = message.indexOf("\": ");
    return target < 0 ? "it has not the form that is asked for" : message.substring(target + 3);
  }
}
