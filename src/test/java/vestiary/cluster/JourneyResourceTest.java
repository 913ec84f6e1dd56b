package vestiary.cluster;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Sending.put;
import static vestiary.scenario.Sending.with;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.scenario.Asking;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

@QuarkusTest
class JourneyResourceTest {

  private static final Map<String, Object> FOURTEEN =
      Map.of("from", "ht", "to", "sa", "minutes", 14);

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void two_churches() {
    scenario.empty();
    Sending.church("ht");
    Sending.church("sa");
  }

  @Test
  void without_minutes_or_coordinates_nothing_is_known() {
    assertEquals(List.of(), Asking.list("/api/journeys"));
  }

  @Test
  void both_ways_take_the_same_unless_one_is_said() {
    put("/api/journeys", FOURTEEN)
        .then()
        .statusCode(200)
        .body("minutes", equalTo(14))
        .body("oneWay", equalTo(false));
    assertEquals(Map.of("ht sa", 14, "sa ht", 14), journeys());

    put("/api/journeys", with(with(FOURTEEN, "minutes", 20), "oneWay", true))
        .then()
        .statusCode(200);
    assertEquals(Map.of("ht sa", 20, "sa ht", 14), journeys());
  }

  @Test
  void sent_twice_it_is_kept_once() {
    put("/api/journeys", FOURTEEN).then().statusCode(200);
    put("/api/journeys", FOURTEEN).then().statusCode(200);

    assertEquals(2, Asking.list("/api/journeys").size());
  }

  @Test
  void coordinates_give_an_estimate_that_is_marked_and_replaced() {
    // One degree of latitude is 111.2 km on a sphere of 6,371 km; roads and speed are our rule.
    for (String slug : List.of("ht", "sa")) {
      put(
              "/api/churches/" + slug,
              Map.of(
                  "slug",
                  slug,
                  "name",
                  slug,
                  "latitude",
                  slug.equals("ht") ? 41 : 42,
                  "longitude",
                  -90))
          .then()
          .statusCode(200);
    }

    Map<String, Object> estimate = Asking.list("/api/journeys").get(0);
    assertEquals(true, estimate.get("estimated"));
    assertTrue((int) estimate.get("minutes") > 60 && (int) estimate.get("minutes") < 240);

    put("/api/journeys", FOURTEEN).then().statusCode(200);
    assertEquals(
        List.of(false, false),
        Asking.list("/api/journeys").stream().map(j -> j.get("estimated")).toList());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, -5, 1441, Integer.MAX_VALUE})
  void minutes_are_from_one_to_a_day(int minutes) {
    refusing.unfit(() -> put("/api/journeys", with(FOURTEEN, "minutes", minutes)), "minutes");
  }

  @Test
  void an_unknown_church_is_named_beside_what_else_is_wrong() {
    refusing.unfit(
        () -> put("/api/journeys", Map.of("from", "x", "to", "y")), "from", "to", "minutes");
    refusing.unfit(() -> put("/api/journeys", Map.of()), "from", "to", "minutes");
  }

  @Test
  void a_journey_leads_elsewhere() {
    refusing.unfit(() -> put("/api/journeys", with(FOURTEEN, "to", "ht")), "to");
  }

  private static Map<String, Object> journeys() {
    Map<String, Object> minutes = new HashMap<>();
    Asking.list("/api/journeys")
        .forEach(j -> minutes.put(j.get("from") + " " + j.get("to"), j.get("minutes")));
    return minutes;
  }
}
