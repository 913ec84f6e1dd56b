package vestiary.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Browsing.open;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Sending.get;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Planning;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** What the sheet for the vesting table says, with a plan and without one. */
@QuarkusTest
class SetOutTest {

  private static final String JUBILEE = "2026-12-08T18:30";

  @Inject Scenario scenario;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void where_no_plan_says_it_the_sheet_says_what_is_asked_for_and_what_is_free_here() {
    page(sheet("sa", JUBILEE))
        .isHeaded("Set-out sheet")
        .says(
            "Saint Anne, Millferry · Tuesday 8 December 2026",
            "Set out by 18:00 for Mass at 18:30",
            "Lay in this order, first lowest: chasuble or dalmatic, stole, cincture, alb, amice.",
            "No plan says yet who wears what",
            "Father Fintan Oakhallow",
            "brings his own",
            "Chasuble, white: free here: SA-W1-C, 120 cm and SA-W2-C, 122 cm. Else stole over"
                + " the alb, without a chasuble (GIRM 209; RS 124).",
            "cincture, alb, amice from the cupboard");
  }

  @Test
  void with_a_plan_each_piece_says_where_it_is_and_from_where_it_comes_by_when() {
    Planning.applied("2026-12-07", "2026-12-13");
    JsonPath sheet = api("sa", JUBILEE);

    List<Map<String, Object>> chasubles = lines(sheet, "concelebrant", "chasuble");
    assertEquals(3, chasubles.size());
    assertTrue(chasubles.stream().allMatch(line -> line.get("whence").equals("pool")));
    assertTrue(
        chasubles.stream()
            .map(line -> line.get("where").toString())
            .anyMatch(where -> where.matches("comes from .*, here by \\d\\d:\\d\\d")),
        () -> chasubles.toString());
    assertEquals("18:00:00", sheet.getString("setOutBy").substring(11, 19));
    assertTrue(!sheet.getList("coming").isEmpty());
    page(sheet("sa", JUBILEE))
        .says("Comes, and goes on", "here by", "outgoing rail")
        .keepsSilentOn("No plan says yet");
  }

  @Test
  void before_a_mass_one_more_may_come_and_afterwards_it_can_be_said_what_was_worn() {
    page(sheet("sa", JUBILEE)).says("One more has come").keepsSilentOn("What was worn");

    String over = Sending.mass("sa", "2026-11-29T10:00").get("id") + "/set-out";

    page("/masses/" + over).says("What was worn").keepsSilentOn("One more has come");
  }

  @Test
  void piles_are_laid_lowest_first_for_priests_and_deacons() {
    JsonPath sheet = api("sa", JUBILEE);

    assertEquals(
        List.of("chasuble", "stole", "cincture", "alb", "amice"),
        sheet.getList("people.find { it.role == 'concelebrant' }.pile.kind"));
    assertEquals(
        List.of("dalmatic", "deacon-stole", "cincture", "alb", "amice"),
        sheet.getList("people.find { it.role == 'deacon' }.pile.kind"));
  }

  @Test
  void one_page_holds_the_weekend_of_a_church_or_of_all() {
    page("/set-out?from=2026-12-05&to=2026-12-06&church=ht")
        .isHeaded("Set-out sheets")
        .says("Set out by 09:30 for Mass at 10:30", "Set out by 10:00 for Mass at 10:30")
        .keepsSilentOn("Saint Anne, Millferry")
        .links("/set-out?from=2026-12-05&to=2026-12-06");
    page("/set-out?from=2026-12-05&to=2026-12-06").says("Saint Anne, Millferry");
    page("/set-out?from=2026-12-05&to=2026-12-06&paper=a6").links("/css/setout-a6.css");
    page("/week/2026-12-01").links("/set-out?from=2026-12-05&to=2026-12-06");
    page("/day/2026-12-05").links("/set-out?from=2026-12-05&to=2026-12-05");
  }

  @Test
  void a_day_without_a_mass_says_so_and_what_cannot_be_is_told() {
    page("/set-out?from=2026-12-05&to=2026-12-05&church=pp").says("No Mass is entered");
    open("/set-out?from=2026-12-05&to=2027-12-05").is(400);
    open("/set-out?from=2026-12-05&to=2026-12-05&church=none").is(404);
    open("/set-out?paper=a7").is(400);
    String mass = "/masses/" + Asking.mass("sa", JUBILEE).get("id");
    Sending.delete("/api" + mass).then().statusCode(204);
    open(mass + "/set-out").is(404);
  }

  private static String sheet(String church, String start) {
    return "/masses/" + Asking.mass(church, start).get("id") + "/set-out";
  }

  private static JsonPath api(String church, String start) {
    return get("/api" + sheet(church, start)).then().statusCode(200).extract().jsonPath();
  }

  private static List<Map<String, Object>> lines(JsonPath sheet, String role, String kind) {
    return sheet.getList(
        "people.findAll { it.role == '%s' }.collect { it.pile.find { it.kind == '%s' } }"
            .formatted(role, kind));
  }
}
