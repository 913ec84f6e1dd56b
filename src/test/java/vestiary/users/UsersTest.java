package vestiary.users;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.users.LettingIn.program;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Page;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;

/** Letting people in, what they may do in which church, and their programs. */
@QuarkusTest
class UsersTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;
  @Inject LettingIn letting;

  @BeforeEach
  void a_real_cluster() {
    scenario.load();
  }

  @Test
  void an_administrator_lets_somebody_in_and_hands_on_a_link() {
    Page page = Browsing.page("/users/new");

    Page entered =
        Browsing.send(
                "/users",
                page.form("/users", Map.of("login", "piers", "name", "Piers", "role", "reader")))
            .is(200)
            .says("Hand this address on");

    String link = entered.words().replaceAll(".*(/welcome/[A-Za-z0-9_-]+).*", "$1");
    Browsing.page(link).says("From now on you sign in as piers");
    Browsing.page("/users").says("Piers", "has not chosen a password yet");
  }

  @Test
  void a_name_to_sign_in_by_is_taken_once() {
    letting.user("piers", Role.READER);

    Browsing.send(
            "/users",
            Map.of("login", List.of("PIERS"), "name", List.of("P"), "role", List.of("reader")))
        .is(409)
        .faults("login", "Somebody else signs in by this name; choose another.");
  }

  @Test
  void the_last_administrator_stays_one() {
    UUID last = letting.user(Role.ADMINISTRATOR);
    String address = "/users/" + last;
    Page page = Browsing.page(address);

    refusing
        .unchanged(() -> Browsing.send(address, page.form(address, Map.of("role", "reader"))))
        .is(422)
        .says("Nobody else is administrator");
    refusing.unchanged(() -> Browsing.press(address + "/removal")).is(422);
  }

  @Test
  void whoever_is_let_in_no_more_is_out_at_once_everywhere() {
    UUID user = letting.user("piers", Role.READER);
    String token = letting.token(user);
    String session = letting.session(user);
    program(token).get("/api/churches").then().statusCode(200);

    Browsing.press("/users/" + user + "/removal").leadsTo("/users");

    program(token).get("/api/churches").then().statusCode(401);
    LettingIn.browser(session).get("/week").then().statusCode(303);
  }

  @Test
  void a_sacristan_keeps_the_vestments_and_masses_of_the_named_churches_alone() {
    String token = letting.token(letting.user(Role.SACRISTAN, "ht"));
    Map<String, Object> piece =
        Map.of("code", "N-1", "kind", "cope", "colours", List.of("white"), "home", "ht");
    Map<String, Object> elsewhere =
        Map.of("code", "N-2", "kind", "cope", "colours", List.of("white"), "home", "sa");
    String foreign = Asking.mass("sa", "2026-12-08T18:30").get("id").toString();

    program(token).body(piece).post("/api/pieces").then().statusCode(201);
    refusing.refused(403, "not-allowed", () -> program(token).body(elsewhere).post("/api/pieces"));
    refusing.refused(403, "not-allowed", () -> program(token).delete("/api/pieces/SA-W1-C"));
    refusing.refused(
        403,
        "not-allowed",
        () ->
            program(token)
                .body(Map.of("from", "2026-12-20", "reason", "Theirs"))
                .post("/api/pieces/SA-W1-C/care"));
    refusing.refused(403, "not-allowed", () -> program(token).delete("/api/masses/" + foreign));
    refusing.refused(
        403,
        "not-allowed",
        () ->
            program(token)
                .body(Map.of("church", "ht", "start", "2026-12-08T18:30"))
                .put("/api/masses/" + foreign));
    program(token)
        .body(Map.of("church", "ht", "start", "2026-12-10T11:00"))
        .post("/api/masses")
        .then()
        .statusCode(201);
  }

  @Test
  void an_intention_is_seen_by_administrator_and_pastor_and_outlives_a_sacristans_change() {
    String pastor = letting.token(letting.user(Role.PASTOR));
    String sacristan = letting.token(letting.user(Role.SACRISTAN, "ht"));
    String mass =
        program(pastor)
            .body(
                Map.of("church", "ht", "start", "2026-12-10T11:00", "intention", "For the harvest"))
            .post("/api/masses")
            .then()
            .statusCode(201)
            .body("intention", equalTo("For the harvest"))
            .extract()
            .path("id");
    String address = "/api/masses/" + mass;

    program(sacristan).get(address).then().body(not(containsString("harvest")));
    program(sacristan)
        .body(Map.of("church", "ht", "start", "2026-12-10T11:30"))
        .put(address)
        .then()
        .statusCode(200);

    program(pastor).get(address).then().body("intention", equalTo("For the harvest"));
  }

  @Test
  void a_token_for_reading_reads_and_no_more_whatever_its_user_may() {
    String token = letting.token(letting.user(Role.ADMINISTRATOR), true);

    program(token).get("/api/churches").then().statusCode(200);
    refusing.refused(
        403,
        "not-allowed",
        () -> program(token).body(Map.of("slug", "x", "name", "X")).post("/api/churches"));
    program(token).get("/account").then().statusCode(403);
  }

  @Test
  void a_token_is_shown_once_says_when_it_was_used_and_can_be_ended() {
    UUID user = letting.user(Role.READER);
    String session = letting.session(user);
    String page = LettingIn.browser(session).get("/account").asString();

    String made =
        LettingIn.browser(session)
            .formParam("form-token", LettingIn.formToken(page))
            .formParam("name", "Laptop")
            .formParam("days", "7")
            .post("/account/tokens")
            .asString();

    String token = made.replaceAll("(?s).*<code>([A-Za-z0-9_-]{40,})</code>.*", "$1");
    String before = LettingIn.browser(session).get("/account").asString();
    assertFalse(before.contains(token), "it is shown again");
    assertTrue(before.contains("Reads only; good until"), before);
    assertTrue(before.contains("not used yet"), before);
    program(token).get("/api/churches").then().statusCode(200);
    String after = LettingIn.browser(session).get("/account").asString();
    assertTrue(after.contains("last used on"), after);

    String end = after.replaceAll("(?s).*action=\"(/account/tokens/[^\"]+/end)\".*", "$1");
    LettingIn.browser(session)
        .formParam("form-token", LettingIn.formToken(after))
        .post(end)
        .then()
        .statusCode(303);
    program(token).get("/api/churches").then().statusCode(401);
  }

  @Test
  void a_password_is_changed_by_whoever_knows_the_old_one_and_ends_every_other_session() {
    UUID user = letting.withPassword("piers", Role.READER);
    String here = letting.session(user);
    String there = letting.session(user);
    String token = LettingIn.formToken(LettingIn.browser(here).get("/account").asString());
    String fresh = "candle nutmeg harbour eleven";

    change(here, token, "wrong", fresh)
        .then()
        .statusCode(400)
        .body(containsString("This is not your present password."));
    change(here, token, LettingIn.PASSWORD, fresh).then().statusCode(303);

    LettingIn.browser(here).get("/week").then().statusCode(303);
    LettingIn.browser(there).get("/week").then().statusCode(303);
    LettingIn.tries("piers", LettingIn.PASSWORD).then().statusCode(400);
    LettingIn.tries("piers", fresh).then().statusCode(303);
  }

  private static Response change(String session, String token, String old, String fresh) {
    return LettingIn.browser(session)
        .formParams(Map.of("form-token", token, "old", old, "password", fresh, "again", fresh))
        .post("/account/password");
  }
}
