package vestiary.scenario;

import static io.restassured.RestAssured.given;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reads the API as a program would. */
public final class Asking {

  private Asking() {}

  /** The clashes with a Mass that starts on these dates, the last included. */
  public static List<Map<String, Object>> clashes(String from, String to) {
    return list("/api/clashes?from=%s&to=%s".formatted(from, to));
  }

  /** The Masses of a church on one date. */
  public static List<Map<String, Object>> masses(String church, String date) {
    return list("/api/masses?from=%s&to=%s&church=%s".formatted(date, date, church));
  }

  /** The only Mass of a church that starts at that minute, as in 2026-12-08T18:30. */
  public static Map<String, Object> mass(String church, String start) {
    return only(
        masses(church, start.substring(0, 10)).stream()
            .filter(m -> m.get("start").toString().startsWith(start))
            .toList());
  }

  /** Sends a Mass again with something changed. */
  public static void change(Map<String, Object> mass, Map<String, Object> changes) {
    Map<String, Object> body = new HashMap<>(mass);
    body.putAll(changes);
    given()
        .contentType("application/json")
        .body(body)
        .put("/api/masses/" + mass.get("id"))
        .then()
        .statusCode(200);
  }

  /** The one element of a list. */
  public static <T> T only(List<T> found) {
    if (found.size() != 1) {
      throw new AssertionError("one was to be found, and there are " + found);
    }
    return found.get(0);
  }

  /** A list that the API answers. */
  public static List<Map<String, Object>> list(String address) {
    return given().get(address).then().statusCode(200).extract().jsonPath().getList("");
  }
}
