package vestiary.movement;

import static vestiary.scenario.Sending.post;

import io.restassured.response.Response;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import vestiary.scenario.Asking;
import vestiary.scenario.Planning;

/** The journeys of the week of the jubilee, as a program reads them. */
final class Journeys {

  static final String MONDAY = "2026-12-07";
  static final String SUNDAY = "2026-12-13";

  private Journeys() {}

  static List<Map<String, Object>> all() {
    return Asking.list("/api/movements?from=%s&to=%s".formatted(MONDAY, SUNDAY));
  }

  /** The first of the week before that somebody makes anyway; that week is planned for it. */
  static Map<String, Object> ofRider() {
    Planning.applied("2026-11-30", "2026-12-06");
    return Asking.list("/api/movements?from=2026-11-30&to=2026-12-06").stream()
        .filter(one -> one.get("by") != null)
        .findFirst()
        .orElseThrow();
  }

  static Map<String, Object> one(Object id) {
    return all().stream().filter(one -> one.get("id").equals(id)).findFirst().orElseThrow();
  }

  /** Gives it to that person. */
  static Map<String, Object> ask(Object id, String carrier) {
    return post("/api/movements/%s/ask".formatted(id), Map.of("carrier", carrier, "by", "Bram"))
        .then()
        .statusCode(200)
        .extract()
        .jsonPath()
        .getMap("");
  }

  /** Accept, decline, done or withdraw, at the version that was seen. */
  static Response answer(Object id, String deed, Object version) {
    Map<String, Object> body = new HashMap<>();
    body.put("version", version);
    return post("/api/movements/%s/%s".formatted(id, deed), body);
  }
}
