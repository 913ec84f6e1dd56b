package vestiary.users;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.users.LettingIn.PASSWORD;
import static vestiary.users.LettingIn.browser;
import static vestiary.users.LettingIn.formToken;
import static vestiary.users.LettingIn.nobody;
import static vestiary.users.LettingIn.tries;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.Cookie;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import vestiary.access.Role;
import vestiary.problem.Refused;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** Coming in, going out, and what is seen by whoever does neither. */
@QuarkusTest
class SignInTest {

  private static final int CROWD = 14;

  @Inject Scenario scenario;
  @Inject Refusing refusing;
  @Inject LettingIn letting;
  @Inject Passwords passwords;

  @BeforeEach
  void a_real_cluster() {
    scenario.load();
  }

  @Test
  void a_page_of_a_real_cluster_leads_nobody_to_the_sign_in_page_and_says_nothing() {
    browser()
        .get("/week/2026-12-07?church=ht")
        .then()
        .statusCode(303)
        .header("Location", endsWith("/sign-in?back=%2Fweek%2F2026-12-07%3Fchurch%3Dht"));

    browser().get("/sign-in").then().statusCode(200).body(not(containsString("Wenlow")));
  }

  @Test
  void the_api_of_a_real_cluster_answers_nobody() {
    nobody()
        .get("/api/churches")
        .then()
        .statusCode(401)
        .contentType("application/problem+json")
        .header("WWW-Authenticate", "Bearer")
        .body("type", equalTo("/problems/sign-in-first"))
        .body(not(containsString("Wenlow")));
    nobody().get("/q/metrics").then().statusCode(401);
    nobody().get("/q/openapi").then().statusCode(401);
    nobody().get("/q/health/live").then().statusCode(200);
  }

  @Test
  void a_token_that_is_not_good_is_refused_though_everybody_may_look() {
    scenario.becomeDemo();

    nobody().get("/api/churches").then().statusCode(200);
    for (String header : new String[] {"Bearer x", "Bearer ", "Basic eDp5"}) {
      nobody().header("Authorization", header).get("/api/churches").then().statusCode(401);
    }
  }

  @Test
  void in_the_demo_everybody_looks_and_whoever_changes_something_says_first_who_they_are() {
    scenario.becomeDemo();

    browser().get("/week").then().statusCode(200).body(containsString("Wenlow"));
    refusing.refused(
        401,
        "sign-in-first",
        () -> nobody().body(Map.of("slug", "x", "name", "X")).post("/api/churches"));
    refusing
        .unchanged(() -> browser().formParam("church", "ht").post("/masses"))
        .then()
        .statusCode(401)
        .body(containsString("Sign in first"));
  }

  @Test
  void in_the_demo_one_press_is_enough_to_come_in_as_one_of_its_people() {
    scenario.becomeDemo();
    String page = browser().get("/sign-in?back=/vestments").then().extract().asString();
    assertTrue(page.contains("Enter as Maren Dovecote"), page);
    assertTrue(page.contains("Sacristan of Holy Trinity and Saint Anne"), page);
    String maren =
        page.replaceAll("(?s).*name=\"as\" value=\"([^\"]+)\"><button[^>]*>Enter as Maren.*", "$1");

    Response pressed =
        browser().formParam("as", maren).formParam("back", "/vestments").post("/sign-in/demo");

    pressed.then().statusCode(303).header("Location", endsWith("/vestments"));
    browser(pressed.getCookie("vestiary-session"))
        .get("/vestments")
        .then()
        .statusCode(200)
        .body(allOf(containsString("Maren Dovecote"), containsString("Sign out")));
  }

  @Test
  void nobody_comes_into_a_real_cluster_by_one_press() {
    UUID user = letting.user(Role.ADMINISTRATOR);

    browser().formParam("as", user).post("/sign-in/demo").then().statusCode(404);
    browser().get("/sign-in").then().body(not(containsString("Enter as")));
  }

  @Test
  void whoever_is_let_in_chooses_a_password_by_a_link_that_is_good_once() {
    String link = "/welcome/" + letting.link(letting.user("piers", Role.READER));
    browser().get(link).then().statusCode(200).body(containsString("piers"));

    Response chosen =
        browser().formParam("password", PASSWORD).formParam("again", PASSWORD).post(link);

    chosen.then().statusCode(303);
    browser(chosen.getCookie("vestiary-session")).get("/week").then().statusCode(200);
    browser().get(link).then().statusCode(404).body(containsString("used already"));
    tries("PIERS", PASSWORD).then().statusCode(303);
  }

  @Test
  void a_weak_password_is_refused_in_words_and_the_link_stays_good() {
    String link = "/welcome/" + letting.link(letting.user("piers", Role.READER));

    assertRefused(link, "short", "short", "must have 10 to 200");
    assertRefused(link, "password1234", "password1234", "too easy to guess");
    assertRefused(link, "piers.piers.", "piers.piers.", "too easy to guess");
    assertRefused(link, PASSWORD, PASSWORD + "x", "Both must be the same.");

    browser().get(link).then().statusCode(200);
  }

  @Test
  void a_wrong_password_and_an_unknown_name_are_answered_alike() {
    letting.withPassword("piers", Role.READER);

    String wrong = tries("piers", "wrong").then().statusCode(400).extract().asString();
    String unknown = tries("peers", "wrong").then().statusCode(400).extract().asString();

    assertTrue(wrong.contains("The name or the password is wrong."), wrong);
    assertEquals(wrong.replace("piers", "peers"), unknown);
    assertTrue(wrong.contains("value=\"piers\""), "the name is kept");
  }

  @Test
  void after_five_wrong_tries_the_right_password_waits_too_and_others_come_in() {
    letting.withPassword("piers", Role.READER);
    letting.withPassword("nell", Role.READER);
    for (int i = 0; i < 5; i++) {
      tries("piers", "wrong " + i).then().statusCode(400);
    }

    tries("piers", PASSWORD)
        .then()
        .statusCode(429)
        .body(containsString("The next is looked at in 15 minutes."));
    tries("nell", PASSWORD).then().statusCode(303);
  }

  @Test
  void a_browser_that_its_user_came_in_by_before_is_not_kept_waiting_by_others() {
    letting.withPassword("piers", Role.READER);
    String device = tries("piers", PASSWORD).getCookie("vestiary-device");
    for (int i = 0; i < 5; i++) {
      tries("piers", "wrong " + i).then().statusCode(400);
    }
    tries("piers", PASSWORD).then().statusCode(429);

    Response own = triesBy(device, "piers", PASSWORD);

    own.then().statusCode(303);
    assertEquals(device, own.getCookie("vestiary-device"));
    tries("piers", PASSWORD).then().statusCode(429);
  }

  @Test
  void a_browser_that_is_known_is_counted_too_and_lets_nobody_else_in() {
    letting.withPassword("piers", Role.READER);
    letting.withPassword("nell", Role.READER);
    String device = tries("piers", PASSWORD).getCookie("vestiary-device");
    for (int i = 0; i < 5; i++) {
      triesBy(device, "piers", "wrong " + i).then().statusCode(400);
    }

    triesBy(device, "piers", PASSWORD).then().statusCode(429);
    tries("piers", PASSWORD).then().statusCode(303);
    triesBy(vestiary.access.Secret.fresh(scenario.ours()).text(), "nell", "wrong")
        .then()
        .statusCode(400)
        .cookies(Map.of());
  }

  @Test
  @Timeout(60)
  void a_crowd_at_the_door_is_sent_away_unheard_and_a_known_browser_comes_in() throws Exception {
    letting.withPassword("piers", Role.READER);
    String device = tries("piers", PASSWORD).getCookie("vestiary-device");
    ExecutorService crowd = Executors.newFixedThreadPool(CROWD);
    AtomicBoolean pressing = new AtomicBoolean(true);
    IntStream.range(0, CROWD).forEach(one -> crowd.submit(() -> press(pressing)));

    try {
      Response sentAway = tries("nell", "wrong");
      while (!sentAway.asString().contains("Too many are trying to sign in just now")) {
        sentAway = tries("nell", "wrong");
      }
      sentAway.then().statusCode(429).header("Retry-After", "5");
      triesBy(device, "piers", PASSWORD).then().statusCode(303);
    } finally {
      pressing.set(false);
      crowd.shutdown();
      assertTrue(crowd.awaitTermination(1, TimeUnit.MINUTES));
    }
    tries("piers", PASSWORD).then().statusCode(303);
  }

  /** Tries again as soon as it is answered, or sent away. */
  private void press(AtomicBoolean pressing) {
    while (pressing.get()) {
      try {
        passwords.matchesOfStranger("wrong", "");
      } catch (Refused sentAway) {
        Thread.yield();
      }
    }
  }

  @Test
  void the_cookie_of_a_known_browser_goes_to_the_sign_in_page_alone_and_to_no_script() {
    letting.withPassword("piers", Role.READER);

    Cookie device = tries("piers", PASSWORD).detailedCookie("vestiary-device");

    assertTrue(device.isHttpOnly());
    assertEquals("/sign-in", device.getPath());
    assertEquals("Lax", device.getSameSite());
  }

  @Test
  void without_mail_and_without_another_service_the_pages_say_whom_to_ask_and_offer_neither() {
    browser().get("/recovery").then().statusCode(200).body(containsString("sends no mails"));
    browser().get("/sign-in").then().body(not(containsString("/sign-in/outside")));
    browser().get("/sign-in/outside").then().statusCode(404);
    String session = letting.session(letting.user(Role.READER));
    browser(session)
        .get("/account")
        .then()
        .body(containsString("No mail server is named"))
        .body(not(containsString("/account/outside")));
  }

  @Test
  void coming_in_gives_a_cookie_that_no_script_reads_and_no_other_site_sends() {
    letting.withPassword("piers", Role.READER);

    Cookie passing = tries("piers", PASSWORD).detailedCookie("vestiary-session");
    Cookie lasting =
        browser()
            .formParams(Map.of("login", "piers", "password", PASSWORD, "stays", "true"))
            .post("/sign-in")
            .detailedCookie("vestiary-session");

    assertTrue(passing.isHttpOnly());
    assertEquals("Lax", passing.getSameSite());
    assertEquals(-1, passing.getMaxAge());
    assertEquals(SignIn.LASTING.toSeconds(), lasting.getMaxAge());
    assertNotEquals(passing.getValue(), lasting.getValue());
  }

  @Test
  void going_out_ends_the_session_and_not_the_cookie_alone() {
    String session = letting.session(letting.user(Role.READER));
    String page = browser(session).get("/week").then().statusCode(200).extract().asString();

    browser(session)
        .formParam("form-token", formToken(page))
        .post("/sign-out")
        .then()
        .statusCode(303);

    browser(session).get("/week").then().statusCode(303);
  }

  @Test
  void all_sessions_of_one_user_end_by_one_press_and_nobody_elses() {
    UUID user = letting.user("piers", Role.READER);
    String here = letting.session(user);
    String there = letting.session(user);
    String other = letting.session(letting.user("nell", Role.READER));
    String page = browser(here).get("/account").then().statusCode(200).extract().asString();
    assertTrue(page.contains("Two sessions open"), page);

    browser(here)
        .formParam("form-token", formToken(page))
        .post("/account/sessions/end")
        .then()
        .statusCode(303);

    browser(here).get("/week").then().statusCode(303);
    browser(there).get("/week").then().statusCode(303);
    browser(other).get("/week").then().statusCode(200);
  }

  @Test
  void an_invented_cookie_is_nobodys_even_if_it_names_another_cluster() {
    UUID other = scenario.openAnother();

    browser(vestiary.access.Secret.fresh(other).text()).get("/week").then().statusCode(303);
    browser("x".repeat(64)).get("/week").then().statusCode(303);
  }

  @Test
  void after_coming_in_nobody_is_led_to_another_site() {
    for (String back : new String[] {"//elsewhere.example", "https://elsewhere.example", "/\\x"}) {
      assertEquals("/week", Back.of(back));
    }
    assertEquals("/week/2026-12-07?church=ht", Back.of("/week/2026-12-07?church=ht"));
    assertEquals("/", Back.of("/"));
  }

  @Test
  void a_form_is_taken_only_from_the_session_it_was_given_to() {
    String session = letting.session(letting.user(Role.ADMINISTRATOR));
    String other = letting.session(letting.user("other", Role.ADMINISTRATOR));
    String token = formToken(browser(session).get("/account").asString());
    String foreign = formToken(browser(other).get("/account").asString());

    for (String sent : new String[] {"", "x", foreign}) {
      refusing
          .unchanged(
              () ->
                  browser(session)
                      .formParam("form-token", sent)
                      .formParam("name", "Laptop")
                      .post("/account/tokens"))
          .then()
          .statusCode(403)
          .body(containsString("The form is too old"));
    }
    refusing
        .unchanged(
            () ->
                browser(session)
                    .header("Sec-Fetch-Site", "cross-site")
                    .formParam("form-token", token)
                    .formParam("name", "Laptop")
                    .post("/account/tokens"))
        .then()
        .statusCode(403);
    browser(session)
        .formParam("form-token", token)
        .formParam("name", "Laptop")
        .post("/account/tokens")
        .then()
        .statusCode(200)
        .body(containsString("Copy this token now"));
  }

  @Test
  void json_sent_with_a_cookie_alone_is_refused_too() {
    String session = letting.session(letting.user(Role.ADMINISTRATOR));

    refusing.refused(
        403,
        "stale-form",
        () ->
            browser(session)
                .accept("application/json")
                .contentType("application/json")
                .body(Map.of("slug", "x", "name", "X"))
                .post("/api/churches"));
  }

  @Test
  void the_administrators_token_of_the_environment_does_everything() {
    Sending.church("xx");

    Sending.get("/api/churches/xx").then().statusCode(200);
  }

  private static Response triesBy(String device, String login, String password) {
    return browser()
        .cookie("vestiary-device", device)
        .formParams(Map.of("login", login, "password", password))
        .post("/sign-in");
  }

  private void assertRefused(String link, String password, String again, String words) {
    String page =
        browser()
            .formParam("password", password)
            .formParam("again", again)
            .post(link)
            .then()
            .statusCode(400)
            .extract()
            .asString();
    assertTrue(page.contains(words), page);
    assertTrue(!page.contains("\"" + password + "\""), "a password is shown");
  }
}
