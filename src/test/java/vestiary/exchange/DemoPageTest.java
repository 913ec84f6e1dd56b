package vestiary.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Page;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

@QuarkusTest
class DemoPageTest {

  private static final String MOVE = "/demo/present-week";

  @Inject Scenario scenario;
  @Inject Refusing refusing;
  @Inject Demo demo;

  @Test
  void a_real_cluster_is_never_moved() {
    scenario.load();

    refusing
        .unchanged(() -> Browsing.press(MOVE))
        .is(404)
        .says("There is no demo \"Wenlow Valley\".");
  }

  @Test
  void pages_outside_the_demo_do_not_speak_of_it() {
    scenario.load();

    Browsing.page("/week/2026-12-07").keepsSilentOn("Move the demo to this week", "invented");
  }

  @Test
  void the_demo_says_so_and_is_made_anew_for_the_present_week() {
    scenario.empty();
    scenario.within(scenario.ours(), demo::load);
    Object jubilee =
        Asking.only(
                Asking.list("/api/masses?from=2026-11-30&to=2026-12-13").stream()
                    .filter(m -> String.valueOf(m.get("note")).contains("Fifty years"))
                    .toList())
            .get("id");
    Sending.delete("/api/masses/" + jubilee).then().statusCode(204);
    int left = masses();
    Browsing.page("/week").says("invented");
    Page.of(LettingIn.browser().get("/times").asString()).says("Sunday Mass", "Holy Trinity");

    Browsing.press(MOVE).leadsTo("/week");

    Page.of(LettingIn.browser().get("/times").asString()).says("Sunday Mass", "Holy Trinity");

    assertEquals(left + 1, masses());
  }

  @Test
  void a_demo_whose_names_are_gone_is_left_as_it_is_and_says_why() {
    scenario.empty();
    scenario.within(scenario.ours(), demo::load);
    Sending.put("/api/churches/sa", Sending.with(Asking.only(saintAnne()), "slug", "saint-anne"))
        .then()
        .statusCode(200);

    refusing
        .unchanged(() -> Browsing.press(MOVE))
        .is(422)
        .says("names what is no longer here", "Put that back, and the demo can be moved.");
  }

  private static List<Map<String, Object>> saintAnne() {
    return Asking.list("/api/churches").stream().filter(c -> c.get("slug").equals("sa")).toList();
  }

  private static int masses() {
    return Asking.list("/api/masses?from=2026-11-30&to=2026-12-13").size();
  }
}
