package vestiary.users;

import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;
import static vestiary.scenario.Sending.put;
import static vestiary.users.LettingIn.browser;
import static vestiary.users.LettingIn.program;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;

/** Users and tokens, as programs keep them. */
@QuarkusTest
class UserResourceTest {

  private static final Map<String, Object> PIERS =
      Map.of(
          "login", "piers",
          "name", "Piers Underlarch",
          "role", "sacristan",
          "churches", List.of("ht"),
          "person", "piers-underlarch");

  @Inject Scenario scenario;
  @Inject Refusing refusing;
  @Inject LettingIn letting;

  @BeforeEach
  void a_real_cluster() {
    scenario.load();
  }

  @Test
  void somebody_is_let_in_changed_and_let_in_no_more() {
    String address =
        post("/api/users", PIERS)
            .then()
            .statusCode(201)
            .body("login", equalTo("piers"))
            .body("churches", equalTo(List.of("ht")))
            .body("person", equalTo("piers-underlarch"))
            .body("hasPassword", equalTo(false))
            .body("link", startsWith("http://localhost"))
            .extract()
            .header("Location")
            .replaceFirst("https?://[^/]+", "");

    get(address).then().statusCode(200).body("link", nullValue());
    put(address, Map.of("login", "piers", "name", "Piers", "role", "reader"))
        .then()
        .statusCode(200)
        .body("role", equalTo("reader"))
        .body("churches", hasSize(0))
        .body("person", nullValue());
    get("/api/users").then().statusCode(200).body("name", equalTo(List.of("Piers")));
    post(address + "/link", Map.of()).then().statusCode(200).body("link", notNullValue());
    delete(address).then().statusCode(204);
    refusing.notThere(() -> get(address));
  }

  @Test
  void what_cannot_be_is_refused_field_by_field() {
    refusing.unfit(() -> post("/api/users", Map.of("role", "king")), "login", "name", "role");
    refusing.unfit(
        () ->
            post(
                "/api/users",
                Map.of("login", "x", "name", "X", "role", "reader", "person", "nobody")),
        "person");
    refusing.unfit(
        () ->
            post(
                "/api/users",
                Map.of(
                    "login", "x", "name", "X", "role", "sacristan", "churches", List.of("none"))),
        "churches");
    post("/api/users", PIERS).then().statusCode(201);
    refusing.refused(409, "taken", () -> post("/api/users", PIERS));
    refusing.refused(
        409,
        "taken",
        () ->
            post(
                "/api/users",
                Map.of(
                    "login", "other",
                    "name", "Other",
                    "role", "reader",
                    "person", "piers-underlarch")));
  }

  @Test
  void the_last_administrator_stays_one() {
    String address = "/api/users/" + letting.user(Role.ADMINISTRATOR);

    refusing.refused(
        422,
        "against-rule",
        () -> put(address, Map.of("login", "administrator", "name", "X", "role", "reader")));
    refusing.refused(422, "against-rule", () -> delete(address));
  }

  @Test
  void sessions_and_tokens_of_a_user_are_ended_from_afar() {
    UUID user = letting.user(Role.READER);
    String session = letting.session(user);
    String token = letting.token(user);
    String address = "/api/users/" + user;
    get(address).then().body("sessions", equalTo(1));

    delete(address + "/sessions").then().statusCode(204);
    browser(session).get("/week").then().statusCode(303);
    program(token).get("/api/churches").then().statusCode(200);

    delete(address + "/tokens").then().statusCode(204);
    program(token).get("/api/churches").then().statusCode(401);
  }

  @Test
  void a_token_makes_and_withdraws_tokens_of_its_own_user_alone() {
    UUID user = letting.user(Role.SACRISTAN, "ht");
    String token = letting.token(user);
    String foreign = letting.tokenId(letting.user(Role.READER));

    String made =
        program(token)
            .body(Map.of("name", "Scanner", "days", 7))
            .post("/api/tokens")
            .then()
            .statusCode(201)
            .body("changes", equalTo(false))
            .body("endsAt", equalTo("2026-12-07T06:00:00-06:00"))
            .header("Location", endsWith("/api/tokens/" + idOf(token, "Scanner")))
            .extract()
            .path("token");

    program(made).get("/api/churches").then().statusCode(200);
    program(made).get("/api/tokens").then().statusCode(403);
    program(token).get("/api/tokens").then().body("name", hasItem("Scanner"));
    refusing.notThere(() -> program(token).delete("/api/tokens/" + foreign));
    program(token).delete("/api/tokens/" + idOf(token, "Scanner")).then().statusCode(204);
    program(made).get("/api/churches").then().statusCode(401);
    refusing.unfit(
        () -> program(token).body(Map.of("name", "", "days", 400)).post("/api/tokens"),
        "name",
        "days");
  }

  @Test
  void the_token_of_the_server_has_no_tokens() {
    refusing.refused(403, "not-allowed", () -> get("/api/tokens"));
  }

  @Test
  void both_stand_in_the_description_of_the_api() {
    String description = get("/q/openapi").asString();

    for (String path : List.of("/api/users:", "/api/users/{id}/sessions:", "/api/tokens/{id}:")) {
      assertTrue(description.contains(path), path);
    }
  }

  private static String idOf(String token, String name) {
    return program(token)
        .get("/api/tokens")
        .then()
        .extract()
        .path("find { it.name == '%s' }.id".formatted(name));
  }
}
