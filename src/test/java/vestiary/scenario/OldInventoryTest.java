package vestiary.scenario;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Browsing.press;
import static vestiary.scenario.Browsing.send;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Saint Martin's inventory is of 2021; it is taken anew by walking through the sacristy. It is noon
 * (UTC) on 30 November 2026.
 */
@QuarkusTest
class OldInventoryTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void an_inventory_older_than_36_months_is_a_hard_reminder() {
    page("/inventories")
        .says(
            "Worth knowing: Its last inventory is of 12 October 2021: older than 36 months.",
            "Its last inventory is of 3 February 2026.",
            "older than 12 months. It is due.");
    page("/churches/sm").says("Its last inventory is of 12 October 2021: older than 36 months.");
    page("/inventories/sm").says("older than 36 months", "One copy to the parish archive");

    Sending.get("/api/inventories?church=sm")
        .then()
        .statusCode(200)
        .body("", hasSize(1))
        .body("[0].last", equalTo("2021-10-12"))
        .body("[0].age", equalTo("old"))
        .body("[0].sentence", containsString("older than 36 months"));
    Sending.get("/api/inventories").then().body("find { it.church == 'sj' }.age", equalTo("due"));
  }

  @Test
  void a_sacristy_is_walked_through_and_two_differences_are_settled() {
    String walk = send("/stocktakes", Map.of("church", List.of("sm"))).wayOn();
    page(walk).says("Eight pieces are to be looked for yet; no differences are to be settled.");
    for (String code : List.of("SM-G1-C", "SM-G1-S", "SM-R1-C", "SM-R1-S", "SM-V1-C", "SM-V1-S")) {
      tick(walk, code, "there", "").leadsTo(walk + "?ticked=" + code);
    }
    tick(walk, "SM-W1-C", "elsewhere", "Chest in the loft");
    tick(walk, "SM-W1-S", "missing", "");

    page(walk)
        .says("No pieces are to be looked for yet; two differences are to be settled.")
        .says("in another place: Chest in the loft", "missing");
    refusing
        .unchanged(() -> press(walk + "/close"))
        .is(409)
        .says("two differences are to be settled. It cannot be closed yet.");
    settle(walk, "SM-W1-C", "new-place");
    settle(walk, "SM-W1-S", "mark-missing");
    page(walk).says("All is looked for and settled.");
    press(walk + "/close").leadsTo(walk + "?ticked=");

    page(walk).says("Closed on 30 November 2026 by the token of the server.");
    Sending.get("/api/pieces/SM-W1-C").then().body("place", equalTo("Chest in the loft"));
    Sending.get("/api/pieces/SM-W1-S").then().body("care[0].kind", equalTo("missing"));
    Sending.get("/api/inventories?church=sm").then().body("[0].age", equalTo("current"));
    page("/stocktakes").says("30 November 2026", "12 October 2021, made elsewhere");
    refusing.unchanged(() -> tick(walk, "SM-W1-C", "there", "")).is(409);
  }

  private static Page tick(String walk, String code, String finding, String note) {
    return send(
        walk + "/ticks",
        Map.of("code", List.of(code), "finding", List.of(finding), "note", List.of(note)));
  }

  private static void settle(String walk, String code, String how) {
    send(walk + "/settlings", Map.of("code", List.of(code), "how", List.of(how)))
        .leadsTo(walk + "?ticked=");
  }
}
