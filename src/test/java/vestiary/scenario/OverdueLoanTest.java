package vestiary.scenario;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Our Lady's white dalmatic was due back from the cathedral on 27 November 2026; on the 30th nobody
 * has brought it. Two deacons serve at the jubilee at Saint Anne on Tuesday 8 December, 18:30.
 *
 * <p>Source: the invented scenario; GIRM 338 (from necessity the dalmatic may be left out).
 */
@QuarkusTest
class OverdueLoanTest {

  private static final String DAY = "2026-12-08";

  @Inject Scenario scenario;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void it_is_three_days_overdue_and_the_parish_knows_who_has_it() {
    Map<String, Object> loan = Asking.only(Asking.list("/api/out?overdue=true"));

    assertEquals("OL-D1", loan.get("piece"));
    assertEquals(3, loan.get("overdueDays"));
    assertEquals("2026-11-28T00:00:00-06:00", loan.get("due"));
    assertEquals("Our Lady of the Rosary", loan.get("owner"));
    assertEquals("the cathedral", loan.get("borrower"));
    assertEquals(Asking.list("/api/out?overdue=true"), Asking.list("/api/loans?open=true"));
  }

  @Test
  void its_place_is_told_in_a_sentence() {
    Map<String, Object> place = Asking.list("/api/whereabouts/OL-D1").get(0);

    assertEquals("out", place.get("state"));
    assertEquals(
        "Out, with the cathedral since Friday 13 November;"
            + " due Friday 27 November, three days overdue.",
        place.get("sentence"));
  }

  @Test
  void two_deacons_need_white_dalmatics_and_one_is_there_while_it_is_out() {
    Map<String, Object> clash = Mending.clash(DAY, "dalmatic");

    assertEquals(2, clash.get("needed"));
    assertEquals(1, clash.get("available"));
    assertEquals(List.of("SA-D1"), clash.get("pieces"));
    assertEquals(List.of("HT-D1", "HT-D2"), clash.get("elsewhere"));
  }

  @Test
  void one_of_holy_trinitys_two_mends_it_or_one_deacon_in_alb_and_stole() {
    Map<String, Object> clash = Mending.clash(DAY, "dalmatic");

    Map<String, Object> carry = Mending.remedy(clash, "carry");
    String step = Mending.remedy(clash, "step").get("sentence").toString();

    assertEquals(
        "Bring one white dalmatic from Holy Trinity: HT-D1.", carry.get("sentence"), carry + "");
    assertTrue(carry.toString().contains("14"), carry.toString());
    assertTrue(step.contains("stole"), step);
  }

  @Test
  void the_page_of_the_clash_says_why_it_cannot_serve() {
    String page =
        Sending.get("/clashes/%s/%s".formatted(DAY, Mending.clash(DAY, "dalmatic").get("id")))
            .then()
            .statusCode(200)
            .extract()
            .asString();

    assertTrue(page.contains("out and overdue"), page);
  }

  @Test
  void once_it_is_back_it_could_be_carried_there_too() {
    Sending.post("/api/pieces/OL-D1/back", Map.of()).then().statusCode(200);

    assertEquals(
        List.of("HT-D1", "HT-D2", "OL-D1"), Mending.clash(DAY, "dalmatic").get("elsewhere"));
    assertEquals(List.of(), Asking.list("/api/out"));
    Sending.get("/api/pieces/OL-D1").then().body("care", equalTo(List.of()));
    assertEquals(
        List.of("2026-11-30T06:00:00-06:00"),
        Asking.list("/api/loans").stream().map(l -> l.get("back")).collect(Collectors.toList()));
  }

  @Test
  void no_plan_sends_it_anywhere() {
    Planned plan = Planned.on(DAY).isWhole(1, 14);

    assertFalse(plan.worn(Asking.mass("sa", DAY + "T18:30"), "dalmatic").contains("OL-D1"));
    Sending.post("/api/pieces/OL-D1/out", Map.of("church", "sa"))
        .then()
        .statusCode(409)
        .body("detail", containsString("OL-D1 is out already"));
  }
}
