package vestiary.users;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Sending.delete;
import static vestiary.users.LettingIn.browser;
import static vestiary.users.LettingIn.formToken;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.access.Secret;
import vestiary.scenario.Credentials;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;

/** A device lets its user in, and what it signs is good once, here, and for that user. */
@QuarkusTest
class PasskeyTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;
  @Inject LettingIn letting;

  private final SoftDevice device = new SoftDevice();
  private UUID piers;
  private String session;
  private String token;

  @BeforeEach
  void somebody_is_signed_in() {
    scenario.load();
    piers = letting.withPassword("piers", Role.READER);
    session = letting.session(piers);
    token = formToken(browser(session).get("/account").asString());
  }

  @Test
  void a_device_is_added_lets_its_user_in_and_is_removed() {
    String user = add(device);
    browser(session).get("/account").then().body(containsString("My phone"));

    Response entered = enter(device.answer(asked(), user));

    entered.then().statusCode(200).body("to", equalTo("/vestments"));
    String opened = entered.getCookie("vestiary-session");
    browser(opened).get("/week").then().statusCode(200).body(containsString("Some Reader"));
    String page = browser(session).get("/account").asString();
    assertTrue(page.contains("last used on 30 November"), page);
    String removal = page.replaceAll("(?s).*action=\"(/account/passkeys/[^\"]+)\".*", "$1");
    browser(session).formParam("form-token", token).post(removal).then().statusCode(303);
    refused(device.answer(asked(), user), "is not known here");
  }

  @Test
  void an_answer_is_taken_once() {
    String user = add(device);
    Map<String, Object> answer = device.answer(asked(), user);
    enter(answer).then().statusCode(200);

    refused(answer, "was sent before");
  }

  @Test
  void what_was_never_asked_or_asked_of_somebody_who_adds_a_device_is_no_challenge() {
    String user = add(device);

    refused(device.answer(Secret.fresh(scenario.ours()).text(), user), "was sent before");
    refused(device.answer("AAAA", user), "was sent before");
    refused(device.answer(begin().then().extract().path("challenge"), user), "was sent before");
    post("/account/passkeys", device.added(asked(), "Another"))
        .then()
        .statusCode(400)
        .body("detail", containsString("was sent before"));
  }

  @Test
  void what_another_adds_is_not_mine() {
    UUID nell = letting.user("nell", Role.READER);
    String hers = begin().then().extract().path("challenge");
    session = letting.session(nell);
    token = formToken(browser(session).get("/account").asString());

    post("/account/passkeys", device.added(hers, "Nell's"))
        .then()
        .statusCode(400)
        .body("detail", containsString("was sent before"));
  }

  @Test
  void an_answer_for_another_site_without_the_user_or_altered_is_refused() {
    String user = add(device);

    forged(user, d -> d.origin = "https://vestments.example");
    forged(user, d -> d.origin = "http://localhost:8081");
    forged(user, d -> d.site = "vestments.example");
    forged(user, d -> d.flags = SoftDevice.PRESENT);
    forged(user, d -> d.flags = SoftDevice.VERIFIED);
    for (String field : new String[] {"signature", "authenticatorData", "clientData"}) {
      Map<String, Object> altered = new LinkedHashMap<>(device.answer(asked(), user));
      altered.put(field, SoftDevice.text(new byte[] {1, 2, 3}));
      refused(altered, "cannot be taken");
      altered.put(field, "not base64url!");
      enter(altered).then().statusCode(400);
      altered.remove(field);
      enter(altered).then().statusCode(400);
    }
  }

  @Test
  void another_device_or_the_device_of_another_lets_nobody_in_as_piers() {
    String user = add(device);
    String nell = new UserHandle(scenario.ours(), letting.user("nell", Role.READER)).text();
    SoftDevice stolen = new SoftDevice();

    refused(stolen.answer(asked(), user), "is not known here");
    refused(device.answer(asked(), nell), "is not known here");
    refused(device.answer(asked(), ""), "is not known here");
    refused(
        device.answer(asked(), new UserHandle(UUID.randomUUID(), piers).text()),
        "is not known here");
    Map<String, Object> mixed = new LinkedHashMap<>(stolen.answer(asked(), user));
    mixed.put("credential", device.answer("x", user).get("credential"));
    refused(mixed, "cannot be taken");
  }

  @Test
  void a_counter_that_does_not_go_on_betrays_a_copy() {
    device.counter = 7;
    String user = add(device);
    device.counter = 8;
    enter(device.answer(asked(), user)).then().statusCode(200);

    refused(device.answer(asked(), user), "cannot be taken");
    device.counter = 3;
    refused(device.answer(asked(), user), "cannot be taken");
    device.counter = 9;
    enter(device.answer(asked(), user)).then().statusCode(200);
  }

  @Test
  void a_device_is_added_by_whoever_knows_the_password_from_a_form_of_the_session() {
    post("/account/passkeys/challenge", Map.of("password", "wrong"))
        .then()
        .statusCode(400)
        .body("detail", containsString("not your present password"));
    token = "x";
    post("/account/passkeys/challenge", Map.of("password", LettingIn.PASSWORD))
        .then()
        .statusCode(403);
  }

  @Test
  void whoever_is_let_in_no_more_is_not_let_in_by_a_device_either() {
    String user = add(device);
    delete("/api/users/" + piers).then().statusCode(204);

    refused(device.answer(asked(), user), "is not known here");
  }

  @Test
  void the_page_says_by_which_address_keys_are_good_and_shows_nothing_without_a_script() {
    browser()
        .get("/sign-in")
        .then()
        .body(
            containsString("data-passkey=\"sign-in\" data-origin=\"http://localhost:8080\" hidden"))
        .body(not(containsString("<script>")));
  }

  private String add(SoftDevice one) {
    Response begun = begin();
    begun.then().statusCode(200).body("site", equalTo("localhost"));
    post("/account/passkeys", one.added(begun.path("challenge"), "My phone"))
        .then()
        .statusCode(200)
        .body("to", equalTo("/account?done=passkey"));
    return begun.path("user");
  }

  private Response begin() {
    return post("/account/passkeys/challenge", Map.of("password", LettingIn.PASSWORD));
  }

  private void forged(String user, Consumer<SoftDevice> falsify) {
    String origin = device.origin;
    String site = device.site;
    byte flags = device.flags;
    falsify.accept(device);
    refused(device.answer(asked(), user), "cannot be taken");
    device.origin = origin;
    device.site = site;
    device.flags = flags;
  }

  private void refused(Map<String, Object> answer, String words) {
    enter(answer)
        .then()
        .statusCode(400)
        .contentType("application/problem+json")
        .body("detail", containsString(words))
        .cookies(Map.of());
  }

  private Response post(String path, Map<String, Object> body) {
    return RestAssured.given()
        .cookie("vestiary-session", session)
        .header("X-Form-Token", token)
        .accept("application/json")
        .contentType("application/json")
        .body(body)
        .post(path);
  }

  private static String asked() {
    return nobody()
        .post("/sign-in/passkey/challenge")
        .then()
        .statusCode(200)
        .extract()
        .path("challenge");
  }

  private static Response enter(Map<String, Object> answer) {
    return nobody().body(answer).post("/sign-in/passkey");
  }

  private static RequestSpecification nobody() {
    return RestAssured.given()
        .header(Credentials.nobody())
        .accept("application/json")
        .contentType("application/json");
  }
}
