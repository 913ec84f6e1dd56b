package vestiary.problem;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import java.util.Map;

/** A refusal as RFC 9457 writes it, members of its own included. */
record ProblemDocument(
    String type,
    String title,
    int status,
    String detail,
    String instance,
    @JsonAnyGetter Map<String, Object> members) {

  static final String MEDIA_TYPE = "application/problem+json";

  static ProblemDocument from(Refusal refusal, String instance) {
    return new ProblemDocument(
        refusal.kind().address(),
        refusal.title(),
        refusal.status(),
        refusal.detail(),
        instance,
        refusal.members());
  }
}
