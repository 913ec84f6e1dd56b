package vestiary.reservation;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/**
 * A set of Holy Trinity, held for a Mass at Saint Anne, goes there and comes back. It is noon
 * (UTC), 06:00 there, on Monday 30 November 2026; the Mass is on Wednesday of the week after.
 */
@QuarkusTest
class OutForMassTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;
  @Inject OwnerDatabase database;

  private String mass;
  private String held;

  @BeforeEach
  void a_set_is_held() {
    scenario.load();
    mass = Reserving.mass("sa", "2026-12-09T15:00");
    held = Reserving.held("HT-W1", mass);
  }

  @Test
  void what_is_held_goes_out_to_its_mass_and_comes_back() {
    Sending.post("/api/reservations/" + held + "/out", Map.of("carrier", "Greta Holm"))
        .then()
        .statusCode(200)
        .body("state", equalTo("out"))
        .body("pieces", contains("HT-W1-C", "HT-W1-S"))
        .body("lost", nullValue());
    Sending.get("/api/whereabouts/HT-W1-C")
        .then()
        .body("[0].church", equalTo("sa"))
        .body("[0].sent[0].carrier", equalTo("Greta Holm"));

    Sending.post("/api/reservations/" + held + "/back", Map.of())
        .then()
        .statusCode(200)
        .body("state", equalTo("returned"));
    Sending.get("/api/whereabouts/HT-W1-C").then().body("[0].church", equalTo("ht"));
    Reserving.set("HT-W1", mass).then().statusCode(201);
  }

  @Test
  void without_a_word_more_it_goes_as_is_usual() {
    usual("out").then().statusCode(200);

    usual("back").then().statusCode(200);
  }

  @Test
  void by_whatever_way_it_goes_the_reservation_knows() {
    Sending.post("/api/sets/HT-W1/out", Map.of("church", "sa", "due", "2026-12-10"))
        .then()
        .statusCode(200);
    isNow("out");

    Sending.post("/api/pieces/HT-W1-S/back", Map.of()).then().statusCode(200);
    isNow("out");

    Sending.post("/api/pieces/HT-W1-C/back", Map.of()).then().statusCode(200);
    isNow("returned");
  }

  @Test
  void what_is_out_is_neither_given_up_nor_sent_again() {
    Sending.post("/api/reservations/" + held + "/out", Map.of()).then().statusCode(200);

    refusing
        .refused(409, "taken", () -> Sending.delete("/api/reservations/" + held))
        .body("detail", containsString("Say that it is back first"));
    refusing
        .refused(409, "taken", () -> Sending.post("/api/reservations/" + held + "/out", Map.of()))
        .body("detail", containsString("out already"));
  }

  @Test
  void what_is_not_out_does_not_come_back_and_what_was_given_up_does_not_go() {
    refusing.refused(
        409, "taken", () -> Sending.post("/api/reservations/" + held + "/back", Map.of()));
    Sending.delete("/api/reservations/" + held).then().statusCode(204);

    refusing
        .refused(409, "taken", () -> Sending.post("/api/reservations/" + held + "/out", Map.of()))
        .body("detail", containsString("Set it aside anew"));
  }

  @Test
  void when_going_is_taken_back_it_is_held_as_before() throws SQLException {
    Sending.post("/api/reservations/" + held + "/out", Map.of()).then().statusCode(200);
    String sending = Reserving.ask(database, "select id from sending where item = 'HT-W1'").get(0);

    given().formParam("out", sending).post("/s/HT-W1/undo");

    isNow("held").body("pieces", contains("HT-W1-C", "HT-W1-S")).body("lost", nullValue());
    assertEquals(
        List.of("held"),
        Reserving.ask(
            database,
            "select distinct state from occupation where reservation_id is not null and standing"));
  }

  private Response usual(String way) {
    return given().contentType("application/json").post("/api/reservations/{id}/{way}", held, way);
  }

  private ValidatableResponse isNow(String state) {
    return Sending.get("/api/reservations/" + held)
        .then()
        .statusCode(200)
        .body("state", equalTo(state));
  }
}
