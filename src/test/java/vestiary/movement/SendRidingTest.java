package vestiary.movement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Browsing.press;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.put;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Planning;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** One press of the driver sends out all that rides. */
@QuarkusTest
class SendRidingTest {

  @Inject Scenario scenario;

  private Map<String, Object> journey;
  private String address;

  @BeforeEach
  void a_journey_of_the_plan() {
    scenario.load();
    Planning.applied("2026-12-07", "2026-12-13");
    journey =
        Asking.list("/api/movements?from=2026-12-08&to=2026-12-08").stream()
            .filter(one -> one.get("from").equals("ht") && one.get("to").equals("sa"))
            .findFirst()
            .orElseThrow();
    address = "/movements/" + journey.get("id");
  }

  @Test
  void all_that_rides_is_out_for_the_mass_it_is_planned_for() {
    press(address + "/gone").leadsTo(address);

    List<Map<String, Object>> out =
        Asking.list("/api/out").stream().filter(one -> "sa".equals(one.get("church"))).toList();
    assertEquals(
        ((List<?>) journey.get("pieces")).stream().sorted().toList(),
        out.stream().map(one -> one.get("piece")).sorted().toList());
    Object jubilee = Asking.mass("sa", "2026-12-08T18:30").get("id");
    out.forEach(one -> assertEquals(jubilee, one.get("mass")));
    assertEquals(List.of(), Asking.clashes("2026-12-08", "2026-12-08"));
  }

  @Test
  void one_that_cannot_go_keeps_all_at_home() {
    String piece = ((List<?>) journey.get("pieces")).get(0).toString();
    Map<String, Object> body = get("/api/pieces/" + piece).jsonPath().getMap("");
    put("/api/pieces/" + piece, Sending.with(body, "staysHome", true)).then().statusCode(200);
    int before = Asking.list("/api/out").size();

    press(address + "/gone").is(400).says(piece + " does not leave its church.");

    assertEquals(before, Asking.list("/api/out").size());
  }

  @Test
  void a_journey_days_ahead_is_not_offered_yet() {
    page(address).keepsSilentOn("They are gone");
  }
}
