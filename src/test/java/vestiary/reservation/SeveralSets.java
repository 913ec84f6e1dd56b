package vestiary.reservation;

import io.restassured.RestAssured;
import io.restassured.response.Response;
import java.util.List;

/** Several sets set aside at once, as the form of the page does it. */
final class SeveralSets {

  private SeveralSets() {}

  static Response held(List<String> sets, String mass) {
    return RestAssured.given()
        .redirects()
        .follow(false)
        .formParam("mass", mass)
        .formParam("set", sets)
        .post("/reservations");
  }
}
