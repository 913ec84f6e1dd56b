package vestiary.exchange;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** The list of the days that a cluster keeps beside the calendar of its country. */
@QuarkusTest
class ImportPropersTest {

  private static final String COLUMNS =
      "id,celebration,name,day,colour,place,churches,onSunday,keptOn";
  private static final String OUR_LADY =
      "our-lady,,Our Lady of the Ford,08-19,white,patron-of-the-diocese,,,";

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void two_churches() {
    scenario.empty();
    Sending.church("ht");
    Sending.church("sm");
  }

  @Test
  void a_line_may_name_what_a_line_above_it_brings() {
    bringIn(
        OUR_LADY,
        "town,our-lady,,,,patron-of-the-place,ht|sm,before,",
        "decision,our-lady,,,,,,,2027-08-20");

    assertEquals(
        List.of("decision", "our-lady", "town"),
        Asking.list("/api/propers").stream().map(p -> p.get("id")).toList());
    Sending.get("/api/churches/sm/days?from=2026-08-16&to=2026-08-16")
        .then()
        .body("[0].celebrations[0].id", equalTo("our-lady"))
        .body("[0].celebrations[0].rank", equalTo("solemnity"));
  }

  @Test
  void a_trial_says_what_the_real_run_says_and_changes_nothing() {
    byte[] file =
        Csv.file(
            COLUMNS,
            "decision,our-lady,,,,,,,2027-08-20",
            OUR_LADY,
            "second,romuald,,,,patron-of-the-diocese,,,",
            "leap,romuald,,02-29,,memorial,,,",
            "gold,,Saint Nobody,07-07,gold,memorial,,,",
            "nowhere,romuald,,,,memorial,nowhere,,",
            "sunday,romuald,,,,memorial,,after,");

    refusing
        .unchanged(() -> send("&dryRun=true", file))
        .then()
        .statusCode(200)
        .body("lines", equalTo(1))
        .body("bad.line", equalTo(List.of(2, 4, 5, 6, 7, 8)))
        .body(
            "bad.column",
            equalTo(List.of("celebration", "place", "day", "colour", "churches", "onSunday")))
        .body("bad[1].reason", containsString("principal patron of the diocese already"));
    refusing.refused(422, "bad-lines", () -> send("&dryRun=false", file)).body("bad", hasSize(6));
  }

  @Test
  void a_list_that_is_sent_again_doubles_nothing_and_changes_what_it_names() {
    bringIn(OUR_LADY, "romuald,romuald,,,,memorial,sm,,");
    bringIn(OUR_LADY, "romuald,romuald,,,,memorial,ht,,");

    assertEquals(2, Asking.list("/api/propers").size());
    Sending.get("/api/propers/romuald").then().body("churches", equalTo(List.of("ht")));
  }

  @Test
  void an_id_stands_in_a_list_once() {
    send("", Csv.file(COLUMNS, OUR_LADY, OUR_LADY))
        .then()
        .body("bad", hasSize(1))
        .body("bad[0].column", equalTo("id"));
  }

  private static ValidatableResponse bringIn(String... lines) {
    String[] file = new String[lines.length + 1];
    file[0] = COLUMNS;
    System.arraycopy(lines, 0, file, 1, lines.length);
    return send("&dryRun=false", Csv.file(file)).then().statusCode(200).body("done", equalTo(true));
  }

  private static Response send(String query, byte[] file) {
    return given().contentType("text/csv").body(file).post("/api/imports?what=propers" + query);
  }
}
