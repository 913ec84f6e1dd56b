package vestiary.scenario;

import static io.restassured.RestAssured.given;

import java.util.List;
import java.util.Map;

/** Plans as a program would: asks, waits until it is over, applies. */
public final class Planning {

  private Planning() {}

  /** Asks for a plan of these dates, both included, and answers its id. */
  public static String ask(String from, String to) {
    return Sending.post("/api/plans", Map.of("from", from, "to", to))
        .then()
        .statusCode(202)
        .extract()
        .path("id");
  }

  /** The plan once it is over. */
  public static Map<String, Object> finished(String id) {
    return given()
        .get("/api/plans/%s?wait=30".formatted(id))
        .then()
        .statusCode(200)
        .extract()
        .jsonPath()
        .getMap("");
  }

  /** Asks, waits and applies; answers the plan. */
  public static Map<String, Object> applied(String from, String to) {
    String id = ask(from, to);
    finished(id);
    return given()
        .post("/api/plans/%s/apply".formatted(id))
        .then()
        .statusCode(200)
        .extract()
        .jsonPath()
        .getMap("");
  }

  /** A list of such a plan, as its assignments. */
  @SuppressWarnings("unchecked")
  public static List<Map<String, Object>> list(Map<String, Object> plan, String name) {
    return (List<Map<String, Object>>) plan.get(name);
  }
}
