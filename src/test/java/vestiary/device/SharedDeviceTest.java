package vestiary.device;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Credentials;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Page;
import vestiary.scenario.Scenario;
import vestiary.users.LettingIn;

/** A phone that a sacristy shares: signed in for its church, and never without a name. */
@QuarkusTest
class SharedDeviceTest {

  private static final String COOKIE = "vestiary-shared-device";
  private static final Pattern TOKEN = Pattern.compile("name=\"form-token\" value=\"([^\"]+)\"");
  private static final Pattern NAME =
      Pattern.compile("name=\"device-person\" value=\"([^\"]+)\">Greta Holm");

  @Inject Scenario scenario;
  @Inject LettingIn letting;
  @Inject OwnerDatabase owner;

  private String device;
  private String mass;

  @BeforeEach
  void the_phone_of_saint_anne() {
    scenario.load();
    device =
        RestAssured.given()
            .redirects()
            .follow(false)
            .formParams(Map.of("name", "Phone by the press", "church", "sa"))
            .post("/devices")
            .then()
            .statusCode(303)
            .extract()
            .cookie(COOKIE);
    hand("Greta Holm", "");
    hand("Odo Brack", "4711");
    mass = "/masses/" + Asking.masses("sa", "2026-12-08").get(0).get("id");
  }

  @Test
  void it_asks_who_holds_it_before_anything_is_changed_and_the_history_names_both() {
    Response question = cancels(Map.of());
    assertTrue(question.asString().contains("Who is doing this?"), question.asString());
    assertTrue(question.asString().contains("Leave it as it was"), "nobody is held at a question");
    assertFalse(isCancelled());

    cancels(Map.of("device-person", found(NAME, question.asString()))).then().statusCode(303);

    assertTrue(isCancelled());
    Browsing.page("/history" + mass).says("Greta Holm, on Phone by the press: Mass at Saint Anne");
  }

  @Test
  void what_was_typed_is_carried_along_while_it_asks() {
    String token = token(mass);
    Response question =
        phone()
            .formParam("form-token", token)
            .formParam("note", "Two \"new\" candles\nand <the> key")
            .post(mass);

    assertTrue(
        question
            .asString()
            .contains("name=\"note\" value=\"Two &quot;new&quot; candles\nand &lt;the&gt; key\""),
        question.asString());
  }

  @Test
  void a_code_says_who_it_is_and_only_its_hash_is_kept() throws SQLException {
    cancels(Map.of("device-code", "4711")).then().statusCode(303);

    Browsing.page("/history" + mass).says("Odo Brack, on Phone by the press");
    assertEquals(0, count("select count(*) from device_hand where fingerprint like '%4711%'"));
    assertEquals(
        0, count("select count(*) from audit where before::text || after::text like '%argon%'"));
  }

  @Test
  void five_wrong_codes_stop_it_until_an_administrator_lets_it_go_on() {
    for (int i = 0; i < 5; i++) {
      cancels(Map.of("device-code", "000" + i)).then().statusCode(403);
    }

    Response stopped = cancels(Map.of("device-code", "4711"));
    assertEquals(403, stopped.statusCode());
    assertTrue(stopped.asString().contains("This device has stopped"), stopped.asString());
    assertFalse(isCancelled());

    String goOn =
        Browsing.page("/devices")
            .says("stopped after too many wrong codes")
            .action("/devices/[^/]+/go-on");
    Browsing.press(goOn).leadsTo("/devices?done=on");
    cancels(Map.of("device-code", "4711")).then().statusCode(303);
  }

  @Test
  void what_was_done_is_said_once_on_the_device_itself() {
    String said =
        "This phone or computer now stays signed in for its church, and you are signed out on it."
            + " Whoever changes something here is asked for a name or a code.";

    Browsing.send("/devices", Map.of("name", List.of("Other"), "church", List.of("sa")))
        .leadsTo("/week?done=device");

    Response week = phone().get("/week?done=device");
    Page.of(week.asString()).says(said);
    assertTrue(
        Pattern.compile("<p class=\"done[^>]* role=\"status\">" + Pattern.quote(said))
            .matcher(week.asString())
            .find(),
        "it is read out when it appears");
    Page.of(phone().header("Accept-Language", "es").get("/week?done=device").asString())
        .says("Este teléfono u ordenador queda abierto para su iglesia");
    Page.of(phone().get("/week").asString()).keepsSilentOn(said);
    Page.of(phone().get("/week?done=other").asString()).keepsSilentOn(said);
  }

  @Test
  void it_does_what_a_sacristan_of_its_church_may_and_nothing_more() {
    phone().get(mass).then().statusCode(200);
    for (String closed : List.of("/account", "/users", "/devices", "/settings/retention")) {
      phone().get(closed).then().statusCode(403);
    }
    String theirs = "/masses/" + Asking.masses("ht", "2026-12-08").get(0).get("id");
    assertFalse(phone().get(theirs).asString().contains("/cancellation"));
    String token = token(mass);
    phone()
        .formParam("form-token", token)
        .formParam("device-code", "4711")
        .post(theirs + "/cancellation")
        .then()
        .statusCode(403);
    phone()
        .header("X-Form-Token", token)
        .contentType("application/json")
        .body(Map.of())
        .delete("/api" + mass)
        .then()
        .statusCode(403);
  }

  @Test
  void shut_out_from_afar_its_next_request_is_that_of_nobody() {
    phone().get("/week").then().statusCode(200);

    Browsing.press(
            Browsing.page("/devices")
                .says("Saint Anne; since 30 November 2026")
                .action("/devices/[^/]+/end"))
        .leadsTo("/devices?done=ended");

    phone().get("/week").then().statusCode(303);
    phone().accept("application/json").get("/api/churches").then().statusCode(401);
    Browsing.page("/devices").says("None yet.");
  }

  @Test
  void a_sacristan_lets_one_stay_in_an_own_church_alone_and_takes_no_code_of_another() {
    String token = letting.token(letting.user(Role.SACRISTAN, "ht"));

    LettingIn.program(token)
        .contentType("application/x-www-form-urlencoded")
        .formParams(Map.of("name", "Mine", "church", "sa"))
        .post("/devices")
        .then()
        .statusCode(403);
    LettingIn.program(token)
        .contentType("application/x-www-form-urlencoded")
        .formParams(Map.of("name", "Mine", "church", "ht"))
        .post("/devices")
        .then()
        .statusCode(303);
    assertFalse(LettingIn.program(token).get("/devices").asString().contains("Phone by the press"));
    Browsing.send(
            "/devices/churches/sa/hands",
            Map.of("name", List.of("Wat Thorn"), "code", List.of("4711")))
        .is(400)
        .faults("code", "This code cannot be taken; choose another.");
  }

  private static void hand(String name, String code) {
    Browsing.send(
            "/devices/churches/sa/hands", Map.of("name", List.of(name), "code", List.of(code)))
        .leadsTo("/devices/churches/sa");
  }

  private Response cancels(Map<String, String> who) {
    return phone()
        .formParam("form-token", token(mass))
        .formParams(who)
        .post(mass + "/cancellation");
  }

  private String token(String page) {
    return found(TOKEN, phone().get(page).asString());
  }

  private RequestSpecification phone() {
    return RestAssured.given()
        .header(Credentials.nobody())
        .cookie(COOKIE, device)
        .redirects()
        .follow(false)
        .accept("text/html,*/*;q=0.8");
  }

  private boolean isCancelled() {
    return Browsing.page(mass).html().contains(mass + "/restoration");
  }

  private long count(String query) throws SQLException {
    try (Connection connection = owner.getConnection();
        Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(query)) {
      found.next();
      return found.getLong(1);
    }
  }

  private static String found(Pattern pattern, String html) {
    Matcher matcher = pattern.matcher(html);
    if (!matcher.find()) {
      throw new AssertionError(pattern + " not in: " + html);
    }
    return matcher.group(1);
  }
}
