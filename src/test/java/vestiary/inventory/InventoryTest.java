package vestiary.inventory;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import vestiary.access.Role;
import vestiary.photo.Photographs;
import vestiary.scenario.Browsing;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

/** What an inventory holds, and who sees what things are worth. */
@QuarkusTest
class InventoryTest {

  private static final String VALUES = "/api/pieces/SM-W1-C/values";

  @Inject Scenario scenario;
  @Inject Refusing refusing;
  @Inject LettingIn letting;

  @BeforeEach
  void a_chasuble_of_silk_is_worth_something() {
    scenario.load();
    Map<String, Object> piece = Sending.get("/api/pieces/SM-W1-C").jsonPath().getMap("");
    Sending.put(
            "/api/pieces/SM-W1-C",
            Sending.with(
                Sending.with(
                    Sending.with(piece, "description", "White silk, pelican on the back"),
                    "provenance",
                    "Gift of the Ropemakers"),
                "precious",
                true))
        .then()
        .statusCode(200)
        .body("precious", equalTo(true));
    Sending.post(
            VALUES, Map.of("amount", "7319.50", "currency", "usd", "basis", "Bill of the maker"))
        .then()
        .statusCode(200)
        .body("[0].currency", equalTo("USD"));
  }

  @ParameterizedTest
  @CsvSource({
    "2025-12-01, current",
    "2025-11-30, due",
    "2023-12-01, due",
    "2023-11-30, old",
    "2021-10-12, old"
  })
  void an_inventory_is_due_after_twelve_months_and_old_after_thirty_six(
      LocalDate last, String age) {
    assertEquals(age, InventoryAge.of(List.of(last), LocalDate.of(2026, 11, 30)).id());
  }

  @Test
  void without_any_it_was_never_made() {
    assertEquals(InventoryAge.NEVER, InventoryAge.of(List.of(), LocalDate.of(2026, 11, 30)));
  }

  @Test
  void the_inventory_describes_precious_things_first_and_is_signed() {
    Browsing.page("/inventories/sm")
        .says(
            "Precious for their art or history",
            "White silk, pelican on the back; Gift of the Ropemakers",
            "7,319.50 USD",
            "Pastor",
            "Witness",
            "one to the curia");
  }

  @Test
  void a_thing_is_shown_in_it_by_its_oldest_photograph_small() {
    String first = photographed("SM-W1-C");
    photographed("SM-W1-C");

    String page = Browsing.page("/inventories/sm").html();

    assertTrue(page.contains("<img src=\"/vestments/SM-W1-C/photos/%s/small\"".formatted(first)));
    assertEquals(1, page.split("<img ", -1).length - 1);
  }

  @Test
  void what_it_is_worth_is_seen_by_administrator_and_pastor_alone() {
    for (Role role : Role.values()) {
      String token = letting.token(letting.user("one-" + role.id(), role, "sm"));
      boolean may = role == Role.ADMINISTRATOR || role == Role.PASTOR;
      for (String address :
          List.of("/inventories/sm", "/inventories/sm.csv", "/vestments/SM-W1-C/value", VALUES)) {
        String answer = as(token).get(address).asString();
        assertEquals(may, answer.replace(",", "").contains("7319.50"), role + " " + address);
      }
      for (String address :
          List.of(
              "/vestments/SM-W1-C",
              "/vestments",
              "/api/pieces",
              "/api/pieces/SM-W1-C",
              "/history",
              "/history/vestments/SM-W1-C",
              "/api/history",
              "/api/history.csv",
              "/api/inventories")) {
        // Ids and fractions of seconds are random, and some would hold these digits.
        String answer =
            as(token).get(address).asString().replaceAll("[0-9a-f-]{36}|:\\d\\d\\.\\d+", "");
        assertFalse(answer.replace(",", "").contains("7319"), role + " " + address);
      }
    }
  }

  @Test
  void the_table_can_be_brought_in_again_and_changes_nothing() {
    String table = Sending.get("/inventories/sm.csv").asString();
    assertTrue(
        table.startsWith(String.join(",", InventoryTable.COLUMNS) + ",value,currency"), table);
    List<Object> before = Sending.get("/api/pieces?church=sm").jsonPath().getList("");

    Browsing.upload("pieces", "false", table.getBytes(StandardCharsets.UTF_8)).is(200);

    assertEquals(before, Sending.get("/api/pieces?church=sm").jsonPath().getList(""));
  }

  @Test
  void a_sum_that_is_none_is_refused() {
    refusing.unfit(
        () -> Sending.post(VALUES, Map.of("amount", "a lot", "currency", "XYZ")),
        "amount",
        "currency");
    Sending.get(VALUES).then().body("", hasSize(1));
  }

  @Test
  void an_inventory_on_paper_is_noted_but_not_for_a_day_to_come() {
    Browsing.send("/inventories/sm/earlier", Map.of("date", List.of("2026-05-03")))
        .leadsTo("/inventories?done=noted");
    Sending.get("/api/inventories?church=sm").then().body("[0].age", equalTo("current"));

    refusing
        .unchanged(
            () -> Browsing.send("/inventories/sm/earlier", Map.of("date", List.of("2026-12-24"))))
        .is(400)
        .faults("date", "An inventory cannot have been made on a day to come.");
  }

  @Test
  void a_giver_who_is_removed_for_good_is_in_no_inventory() {
    String slug = Sending.get("/api/people").path("find { it.role == 'priest' }.slug");
    String name = Sending.get("/api/people").path("find { it.role == 'priest' }.name");
    Map<String, Object> piece = Sending.get("/api/pieces/SM-W1-C").jsonPath().getMap("");
    Sending.put(
            "/api/pieces/SM-W1-C",
            Sending.with(
                piece, "provenance", "Gift of " + name.substring(name.lastIndexOf(' ') + 1)))
        .then()
        .statusCode(200);

    Sending.post("/api/people/%s/erasure".formatted(slug), Map.of()).then().statusCode(204);

    Sending.get("/api/pieces/SM-W1-C")
        .then()
        .body("provenance", equalTo("Gift of a person who was removed"));
    as(null).get("/history/vestments/SM-W1-C").then().body(not(containsString(name)));
  }

  private static RequestSpecification as(String token) {
    return token == null
        ? RestAssured.given().accept("*/*")
        : LettingIn.program(token).accept("*/*");
  }

  /** Adds a photograph; answers its id. */
  private static String photographed(String piece) {
    return RestAssured.given()
        .multiPart("photo", "one.jpg", Photographs.jpeg(), "image/jpeg")
        .post("/api/pieces/" + piece + "/photos")
        .then()
        .statusCode(201)
        .extract()
        .path("id");
  }
}
