package vestiary.scenario;

import static io.restassured.RestAssured.given;

import io.restassured.response.Response;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Sends to the API as a program would, and enters the few things that a test begins with. */
public final class Sending {

  private Sending() {}

  public static Response post(String address, Object body) {
    return given().contentType("application/json").body(body).post(address);
  }

  public static Response put(String address, Object body) {
    return given().contentType("application/json").body(body).put(address);
  }

  public static Response delete(String address) {
    return given().delete(address);
  }

  public static Response get(String address) {
    return given().get(address);
  }

  /** The body with something more, or something else, in it. */
  public static Map<String, Object> with(Map<String, Object> body, String field, Object value) {
    Map<String, Object> changed = new HashMap<>(body);
    changed.put(field, value);
    return changed;
  }

  /** Enters a church with this short name and nothing special about it. */
  public static void church(String slug) {
    post("/api/churches", Map.of("slug", slug, "name", "Church of " + slug)).then().statusCode(201);
  }

  /** Enters a Mass with nothing chosen but church and start. */
  public static Map<String, Object> mass(String church, String start) {
    return mass(Map.of("church", church, "start", start));
  }

  /** Enters a Mass. */
  public static Map<String, Object> mass(Map<String, Object> body) {
    return post("/api/masses", body).then().statusCode(201).extract().jsonPath().getMap("");
  }

  /** Enters a piece of one colour. */
  public static void piece(String code, String kind, String colour, String home) {
    piece(Map.of("code", code, "kind", kind, "colours", List.of(colour), "home", home));
  }

  /** Enters a piece. */
  public static void piece(Map<String, Object> body) {
    post("/api/pieces", body).then().statusCode(201);
  }
}
