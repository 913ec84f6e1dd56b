package vestiary.users;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.users.LettingIn.browser;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.scenario.Asking;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;

/** What somebody types before they have signed in is kept until they have. */
@QuarkusTest
class KeptFormTest {

  private static final Pattern HIDDEN =
      Pattern.compile("<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\">");
  private static final String NOTE = "Choir; \"Ave\" & candles";

  @Inject Scenario scenario;
  @Inject Refusing refusing;
  @Inject LettingIn letting;

  @BeforeEach
  void a_real_cluster() {
    scenario.load();
  }

  @Test
  void in_the_demo_it_is_sent_by_one_press_more_once_somebody_has_said_who_they_are() {
    scenario.becomeDemo();
    Response kept = refusing.unchanged(() -> type("/masses"));
    kept.then().statusCode(401).body(containsString("What you typed is kept."));
    String form = form(kept.asString(), "Enter as Maren Dovecote");

    Response entered = browser().formParams(hidden(form)).post("/sign-in/demo");

    entered.then().statusCode(200).body(containsString("You are signed in"));
    Response sent =
        browser(entered.getCookie("vestiary-session"))
            .formParams(hidden(form(entered.asString(), "Send it now")))
            .post("/masses");
    sent.then().statusCode(303);
    assertEquals(NOTE, Asking.mass("ht", "2026-12-10T11:00").get("note"));
  }

  @Test
  void a_wrong_password_keeps_it_too() {
    letting.withPassword("piers", Role.PASTOR);
    String form = form(type("/masses").asString(), "Sign in</button>");
    Map<String, String> typed = hidden(form);

    Response wrong =
        browser()
            .formParams(typed)
            .formParam("login", "piers")
            .formParam("password", "x")
            .post("/sign-in");

    wrong.then().statusCode(400).body(containsString("What you typed is kept."));
    browser()
        .formParams(hidden(form(wrong.asString(), "Sign in</button>")))
        .formParam("login", "piers")
        .formParam("password", LettingIn.PASSWORD)
        .post("/sign-in")
        .then()
        .statusCode(200)
        .body(containsString("action=\"/masses\""))
        .body(containsString("Choir; &quot;Ave&quot; &amp; candles"));
  }

  @Test
  void what_comes_from_another_site_is_not_kept() {
    for (String site : List.of("cross-site", "same-site", "none")) {
      browser()
          .header("Sec-Fetch-Site", site)
          .formParam("church", "ht")
          .post("/masses")
          .then()
          .statusCode(401)
          .body(containsString("Sign in first"))
          .body(not(containsString("typed-at")));
    }
    browser()
        .header("Sec-Fetch-Site", "cross-site")
        .formParam("church", "ht")
        .post("/sign-in/kept?at=/masses")
        .then()
        .statusCode(403);
  }

  @Test
  void secrets_and_foreign_addresses_are_not_carried() {
    for (String at : List.of("/account/password", "/users", "//elsewhere.example/x", "x")) {
      String page =
          browser()
              .header("Sec-Fetch-Site", "same-origin")
              .formParam("old", "a secret")
              .post("/sign-in/kept?at=" + at)
              .then()
              .statusCode(401)
              .extract()
              .asString();
      assertTrue(!page.contains("a secret"), at);
    }
    letting.withPassword("piers", Role.READER);
    browser()
        .formParams(
            Map.of(
                "login", "piers",
                "password", LettingIn.PASSWORD,
                "typed-at", "//elsewhere.example/x"))
        .post("/sign-in")
        .then()
        .statusCode(303)
        .header("Location", endsWith("/week"));
  }

  /** As a browser does: the form is sent again to where the answer leads. */
  private static Response type(String path) {
    Map<String, String> typed =
        Map.of(
            "church", "ht",
            "date", "2026-12-10",
            "time", "11:00",
            "minutes", "45",
            "note", NOTE);
    Response led = browser().header("Sec-Fetch-Site", "same-origin").formParams(typed).post(path);
    led.then().statusCode(307).header("Location", endsWith("/sign-in/kept?at=%2Fmasses"));
    return browser()
        .header("Sec-Fetch-Site", "same-origin")
        .formParams(typed)
        .queryParam("at", path)
        .post("/sign-in/kept");
  }

  /** The form of the page in which that stands. */
  private static String form(String page, String words) {
    int at = page.indexOf(words);
    assertTrue(at > 0, () -> words + " not in " + page);
    return page.substring(page.lastIndexOf("<form", at), page.indexOf("</form>", at));
  }

  private static Map<String, String> hidden(String form) {
    Map<String, String> fields = new LinkedHashMap<>();
    Matcher found = HIDDEN.matcher(form);
    while (found.find()) {
      fields.put(
          found.group(1),
          found
              .group(2)
              .replace("&quot;", "\"")
              .replace("&#39;", "'")
              .replace("&lt;", "<")
              .replace("&gt;", ">")
              .replace("&amp;", "&"));
    }
    return fields;
  }
}
