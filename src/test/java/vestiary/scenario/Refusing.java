package vestiary.scenario;

import static org.hamcrest.Matchers.blankOrNullString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;

/**
 * What every refusal must be: a problem document, and not one row changed.
 *
 * <p>Source: RFC 9457, 3 (media type and members).
 */
@ApplicationScoped
public class Refusing {

  private final Scenario scenario;

  Refusing(Scenario scenario) {
    this.scenario = scenario;
  }

  /** Asks, and holds the answer against all that. */
  public ValidatableResponse refused(int status, String name, Supplier<Response> request) {
    return unchanged(request)
        .then()
        .statusCode(status)
        .contentType("application/problem+json")
        .body("type", equalTo("/problems/" + name))
        .body("title", not(blankOrNullString()))
        .body("status", equalTo(status))
        .body("detail", not(blankOrNullString()));
  }

  /** Asks for what must not change a row, whatever comes of it. */
  public <T> T unchanged(Supplier<T> request) {
    String before = scenario.rows();

    T answer = request.get();

    assertEquals(before, scenario.rows(), "a row was changed");
    return answer;
  }

  /** Refused with 400 for these fields and no others, each with a sentence. */
  public void unfit(Supplier<Response> request, String... fields) {
    List<String> named =
        refused(400, "unfit-field", request).extract().jsonPath().getList("faults.field");

    assertEquals(new TreeSet<>(Set.of(fields)), new TreeSet<>(named));
  }

  /** Refused with 404. */
  public void notThere(Supplier<Response> request) {
    refused(404, "not-there", request);
  }
}
