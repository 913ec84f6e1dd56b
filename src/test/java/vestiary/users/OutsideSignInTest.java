package vestiary.users;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.users.LettingIn.browser;
import static vestiary.users.LettingIn.formToken;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.RestAssured;
import io.restassured.http.Cookie;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.net.URI;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.access.Secret;
import vestiary.scenario.Credentials;
import vestiary.scenario.Scenario;
import vestiary.scenario.WithMail;

/** Signing in by the service of a diocese, which is believed no more than it has signed. */
@QuarkusTest
@TestProfile(WithMail.class)
class OutsideSignInTest {

  @Inject Scenario scenario;
  @Inject LettingIn letting;

  @BeforeEach
  void a_real_cluster() {
    scenario.load();
  }

  @Test
  void whoever_was_let_in_is_linked_by_the_link_and_comes_in_by_the_service_from_then_on() {
    String link = letting.link(letting.user("piers", Role.READER));
    browser()
        .get("/welcome/" + link)
        .then()
        .body(containsString("Sign in with the diocese of Wenlow from now on"));

    Response linked = goAndReturn(browser().get("/sign-in/outside?link=" + link), "s-1", "");

    linked.then().statusCode(303);
    assertIsIn(linked);
    browser().get("/welcome/" + link).then().statusCode(404);
    Response again = goAndReturn(browser().get("/sign-in/outside?back=/vestments"), "s-1", "");
    again.then().statusCode(303).header("Location", endsWith("/vestments"));
    assertIsIn(again);
  }

  @Test
  void whoever_is_in_links_their_own_account_and_parts_it_again() {
    UUID piers = letting.withPassword("piers", Role.READER);
    String session = letting.session(piers);
    String token = formToken(browser(session).get("/account").asString());
    link(session, token, "wrong").then().statusCode(400).body(containsString("present password"));

    Response begun = link(session, token, LettingIn.PASSWORD);
    begun.then().statusCode(200).body(containsString("Go on to the diocese of Wenlow"));
    Cookie way = begun.detailedCookie(OutsideCookie.NAME);
    Response away = browser().cookie(OutsideCookie.NAME, way.getValue()).get("/sign-in/outside/go");
    comeBack(browser(session), away, way.getValue(), "s-2", "")
        .then()
        .statusCode(303)
        .header("Location", endsWith("/account?done=outside"));

    assertIsIn(goAndReturn(browser().get("/sign-in/outside"), "s-2", ""));
    browser(session).get("/account").then().body(containsString("Your account is linked."));
    browser(session)
        .formParam("form-token", token)
        .post("/account/outside/removal")
        .then()
        .statusCode(303);
    assertUnknown(goAndReturn(browser().get("/sign-in/outside"), "s-2", ""));
  }

  @Test
  void whom_nobody_here_is_linked_to_is_told_what_to_do_whatever_their_mail_address() {
    letting.user("piers@home.example", Role.ADMINISTRATOR);

    assertUnknown(goAndReturn(browser().get("/sign-in/outside"), "stranger", ""));
  }

  @Test
  void what_the_service_did_not_sign_for_us_for_this_way_and_just_now_is_not_believed() {
    String link = letting.link(letting.user("piers", Role.READER));
    assertIsIn(goAndReturn(browser().get("/sign-in/outside?link=" + link), "s-3", ""));

    for (String flaw : new String[] {"nonce", "audience", "expired", "issuer", "signature"}) {
      Response refused = goAndReturn(browser().get("/sign-in/outside"), "s-3", flaw);

      assertEquals(400, refused.statusCode(), flaw);
      assertTrue(refused.asString().contains("cannot be believed"), flaw);
      assertEquals(null, refused.getCookie("vestiary-session"), flaw);
    }
  }

  @Test
  void a_way_is_gone_once_and_by_the_browser_that_began_it() {
    String link = letting.link(letting.user("piers", Role.READER));
    assertIsIn(goAndReturn(browser().get("/sign-in/outside?link=" + link), "s-4", ""));
    Response begun = browser().get("/sign-in/outside");
    String way = begun.getCookie(OutsideCookie.NAME);
    String other = browser().get("/sign-in/outside").getCookie(OutsideCookie.NAME);
    URI back = signIn(begun, "s-4", "");

    assertOver(browser().get(pathOf(back)));
    assertOver(browser().cookie(OutsideCookie.NAME, other).get(pathOf(back)));
    assertOver(
        browser()
            .cookie(OutsideCookie.NAME, Secret.fresh(scenario.ours()).text())
            .get(pathOf(back)));
    assertIsIn(browser().cookie(OutsideCookie.NAME, way).get(pathOf(back)));
    assertOver(browser().cookie(OutsideCookie.NAME, way).get(pathOf(back)));
  }

  @Test
  void a_code_that_another_way_was_given_is_worth_nothing() {
    String link = letting.link(letting.user("piers", Role.READER));
    assertIsIn(goAndReturn(browser().get("/sign-in/outside?link=" + link), "s-5", ""));
    String stolen = parameter(signIn(browser().get("/sign-in/outside"), "s-5", ""), "code");
    Response own = browser().get("/sign-in/outside");
    String state = parameter(signIn(own, "x", ""), "state");

    browser()
        .cookie(OutsideCookie.NAME, own.getCookie(OutsideCookie.NAME))
        .queryParam("code", stolen)
        .queryParam("state", state)
        .get("/sign-in/outside/return")
        .then()
        .statusCode(400)
        .body(containsString("cannot be believed"));
  }

  @Test
  void one_account_there_is_one_user_here() {
    String first = letting.link(letting.user("piers", Role.READER));
    String second = letting.link(letting.user("nell", Role.READER));
    goAndReturn(browser().get("/sign-in/outside?link=" + first), "s-6", "").then().statusCode(303);

    goAndReturn(browser().get("/sign-in/outside?link=" + second), "s-6", "")
        .then()
        .statusCode(409)
        .body(containsString("Somebody else here is linked"));
    browser().get("/welcome/" + second).then().statusCode(200);
  }

  @Test
  void whoever_did_not_sign_in_there_is_not_in_here() {
    Response begun = browser().get("/sign-in/outside");
    String state = parameter(URI.create(begun.header("Location")), "state");

    browser()
        .cookie(OutsideCookie.NAME, begun.getCookie(OutsideCookie.NAME))
        .get("/sign-in/outside/return?error=access_denied&state=" + state)
        .then()
        .statusCode(400)
        .body(containsString("You were not signed in with the diocese of Wenlow."));
  }

  private static Response link(String session, String token, String password) {
    return browser(session)
        .formParams(Map.of("form-token", token, "outside-password", password))
        .post("/account/outside");
  }

  private static Response goAndReturn(Response begun, String subject, String flaw) {
    return comeBack(browser(), begun, begun.getCookie(OutsideCookie.NAME), subject, flaw);
  }

  private static Response comeBack(
      RequestSpecification as, Response begun, String way, String subject, String flaw) {
    return as.cookie(OutsideCookie.NAME, way).get(pathOf(signIn(begun, subject, flaw)));
  }

  /** At the service, as that subject; answers where the browser is led back. */
  private static URI signIn(Response begun, String subject, String flaw) {
    begun.then().statusCode(303);
    return URI.create(
        RestAssured.given()
            .header(Credentials.nobody())
            .redirects()
            .follow(false)
            .urlEncodingEnabled(false)
            .get("%s&subject=%s&flaw=%s".formatted(begun.header("Location"), subject, flaw))
            .then()
            .statusCode(302)
            .extract()
            .header("Location"));
  }

  private static String pathOf(URI address) {
    assertTrue(address.toString().startsWith(WithMail.ADDRESS), address.toString());
    return address.getRawPath() + "?" + address.getRawQuery();
  }

  private static String parameter(URI address, String name) {
    return address.getRawQuery().replaceAll("(?:^|.*&)%s=([^&]*).*".formatted(name), "$1");
  }

  private static void assertIsIn(Response entered) {
    String session = entered.then().statusCode(303).extract().cookie("vestiary-session");
    browser(session).get("/week").then().statusCode(200);
  }

  private static void assertUnknown(Response answer) {
    answer
        .then()
        .statusCode(403)
        .body(containsString("nobody here is linked to you"))
        .body(not(containsString("piers@")));
  }

  private static void assertOver(Response answer) {
    answer.then().statusCode(400).body(containsString("This way of signing in is over"));
    assertEquals(null, answer.getCookie("vestiary-session"));
  }
}
