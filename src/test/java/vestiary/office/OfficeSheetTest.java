package vestiary.office;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Page;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

/** Ten days before he comes the bishop's office has its sheet; today is Monday 30 November 2026. */
@QuarkusTest
class OfficeSheetTest {

  private static final String LATE =
      "The sheet for the bishop’s office was due on Wednesday 25 November, five days ago, and is not sent.";

  @Inject Scenario scenario;
  @Inject LettingIn letting;

  private String mass;

  @BeforeEach
  void the_bishop_comes_on_saturday() {
    scenario.load();
    mass = Asking.mass("ht", "2026-12-05T10:30").get("id").toString();
  }

  @Test
  void what_is_late_is_said_where_the_pastor_looks() {
    Browsing.page("/review").says("Late.", "Saturday 5 December, 10:30, Holy Trinity.", LATE);
    Browsing.page("/review").links(address());
    Browsing.page("/day/2026-12-05").says(LATE).links(address());
    Browsing.page(address()).says("Late.", LATE);
    Sending.get("/api" + address() + "-sheet")
        .then()
        .statusCode(200)
        .body("due", equalTo("2026-11-25"))
        .body("late", equalTo(true));
  }

  @Test
  void it_is_filled_with_what_the_mass_says_and_asks_for_the_rest() {
    Browsing.page(address())
        .says(
            "Holy Trinity",
            "5 December 2026, 10:30 to about 12:15",
            "Confirmation",
            "Aldous Fenwarden",
            "Five concelebrants and two deacons",
            "Chasuble, stole and mitre",
            "not said yet");

    Page page = Browsing.page(address());
    Browsing.send(
            address(),
            page.form(
                address(),
                Map.of(
                    "arrival", "09:45",
                    "vestingPlace", "The parish hall, first door on the left",
                    "candidates", "46",
                    "brought", "Mitre and crosier")))
        .leadsTo(address() + "?done=kept");

    Browsing.page(address())
        .says("09:45", "The parish hall, first door on the left", "46", "Mitre and crosier");
  }

  @Test
  void once_it_is_sent_it_is_late_no_more_and_can_be_taken_back() {
    Browsing.send(address() + "/sent", Map.of("sentOn", List.of("2026-11-24")))
        .leadsTo(address() + "?done=sent");

    Browsing.page(address())
        .says("The sheet for the bishop’s office was sent on Tuesday 24 November.");
    Browsing.page("/review").keepsSilentOn("The sheet for the bishop’s office");

    Browsing.press(address() + "/not-sent").leadsTo(address() + "?done=not-sent");
    Browsing.page("/review").says(LATE);
  }

  @Test
  void how_many_days_before_is_the_cluster_s_to_say() {
    Browsing.send(
            "/letters/settings",
            Map.of("weekday", List.of("5"), "hour", List.of("09:00"), "officeDays", List.of("3")))
        .leadsTo("/letters?done=saved");

    Browsing.page(address())
        .says("The sheet for the bishop’s office is due on Wednesday 2 December, in two days.");
    Browsing.page("/review").says("is due on Wednesday 2 December").keepsSilentOn("Late.");
  }

  @Test
  void a_mass_without_a_bishop_asks_for_none() {
    Browsing.page("/day/2026-12-08").keepsSilentOn("The sheet for the bishop’s office");
  }

  @Test
  void what_cannot_be_is_refused_and_what_was_typed_stays() {
    Page page = Browsing.page(address());
    Map<String, List<String>> typed =
        page.form(address(), Map.of("candidates", "many", "parking", "Behind the school"));

    Page again = Browsing.send(address(), typed).is(400);

    assertFalse(again.error("candidates").isEmpty());
    assertEquals(List.of("Behind the school"), again.form(address()).get("parking"));
    Browsing.send(address() + "/sent", Map.of("sentOn", List.of("2027-01-01"))).is(400);
    Browsing.send(address() + "/sent", Map.of("sentOn", List.of("1850-01-01")))
        .is(400)
        .faults("sentOn", "1 January 1850 is years before the Mass; look at the year again.");
    Sending.put("/api" + address() + "-sheet", Map.of("arrival", "noon")).then().statusCode(400);
    Sending.put("/api/masses/00000000-0000-7000-8000-000000000000/office-sheet", Map.of())
        .then()
        .statusCode(404);
  }

  @Test
  void of_two_who_fill_it_in_at_once_the_second_is_told() {
    Map<String, Object> sheet = Sending.get("/api" + address() + "-sheet").jsonPath().getMap("");
    Sending.put("/api" + address() + "-sheet", Sending.with(sheet, "parking", "Here"))
        .then()
        .statusCode(200);
    Map<String, Object> now = Sending.get("/api" + address() + "-sheet").jsonPath().getMap("");
    Sending.put("/api" + address() + "-sheet", Sending.with(now, "parking", "There"))
        .then()
        .statusCode(200);

    Sending.put("/api" + address() + "-sheet", Sending.with(now, "parking", "Nowhere"))
        .then()
        .statusCode(409);
  }

  @Test
  void a_reader_sees_it_and_changes_nothing() {
    String token = letting.token(letting.user(Role.READER));

    String page =
        LettingIn.program(token)
            .accept("text/html")
            .get(address())
            .then()
            .statusCode(200)
            .extract()
            .asString();

    assertFalse(page.contains("Note that it is sent"), page);
    LettingIn.program(token).body("{}").put("/api" + address() + "-sheet").then().statusCode(403);
  }

  private String address() {
    return "/masses/%s/office".formatted(mass);
  }
}
