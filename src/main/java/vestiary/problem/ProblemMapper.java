package vestiary.problem;

import static vestiary.web.Speech.say;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.jboss.resteasy.reactive.server.SimpleResourceInfo;

/** The one place where something that was thrown becomes an answer. */
final class ProblemMapper {

  private static final Logger LOG = Logger.getLogger(ProblemMapper.class);

  private final ProblemAnswer answer;
  private final BodyLimit limit;

  ProblemMapper(ProblemAnswer answer, BodyLimit limit) {
    this.answer = answer;
    this.limit = limit;
  }

  @ServerExceptionMapper
  Response refused(Refused refused, ContainerRequestContext request) {
    return answer.to(refused.refusal(), request);
  }

  @ServerExceptionMapper
  Response unreadable(WebApplicationException failure, ContainerRequestContext request) {
    int status = failure.getResponse().getStatus();
    if (status < 400) {
      return failure.getResponse();
    }
    return answer.to(refusal(failure, status, request), request);
  }

  @ServerExceptionMapper
  Response failed(Throwable failure, ContainerRequestContext request, SimpleResourceInfo target) {
    Refusal refusal =
        Undecoded.find(failure)
            .or(() -> DatabaseRefusals.find(failure))
            .orElseGet(
                () -> {
                  String reference = UUID.randomUUID().toString().substring(0, 8);
                  // Not the address: names of people, and links good for one use, stand in some.
                  LOG.errorf(failure, "Fault %s in %s", reference, place(target));
                  return new Refusal.Fault(reference);
                });
    return answer.to(refusal, request);
  }

  /** The framework would answer this one itself, and not with a problem document. */
  @ServerExceptionMapper
  Response misshapen(MismatchedInputException failure, ContainerRequestContext request) {
    return answer.to(unreadable(failure), request);
  }

  private static String place(SimpleResourceInfo target) {
    return target.getResourceClass() == null
        ? "no page"
        : target.getResourceClass().getSimpleName() + "." + target.getMethodName();
  }

  private Refusal refusal(
      WebApplicationException failure, int status, ContainerRequestContext request) {
    Throwable cause = failure.getCause();
    if (cause instanceof JsonProcessingException json) {
      return unreadable(json);
    }
    return switch (status) {
      case 404 -> new Refusal.NotThere("page", request.getUriInfo().getPath());
      case 405 ->
          new Refusal.Unreadable(
              405,
              say("Not possible here"),
              say("This address does not take that kind of request."));
      case 406 ->
          new Refusal.Unreadable(
              406,
              say("Not in that form"),
              say("This address does not answer in the form that is asked for."));
      case 413 -> limit.refusal();
      case 415 ->
          new Refusal.Unreadable(
              415,
              say("Wrong kind of content"),
              say("Send application/json, or use the form on the page."));
      default ->
          new Refusal.Unreadable(
              status,
              say("The request cannot be read"),
              say("The request cannot be read as it stands."));
    };
  }

  private static Refusal unreadable(JsonProcessingException failure) {
    if (!(failure instanceof JsonMappingException json)) {
      return new Refusal.Unreadable(
          400,
          say("Not JSON"),
          say("The request's body is no JSON: ") + failure.getOriginalMessage() + ".");
    }
    return json.getPath().isEmpty()
        ? Refusal.Unfit.of("body", say("The body has not the form that is asked for."))
        : Refusal.Unfit.of(path(json), say("%s cannot be read: %s.", path(json), said(json)));
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
    return target < 0
        ? say("it has not the form that is asked for")
        : message.substring(target + 3);
  }
}
