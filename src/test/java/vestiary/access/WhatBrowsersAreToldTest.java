package vestiary.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.users.LettingIn.PASSWORD;
import static vestiary.users.LettingIn.browser;
import static vestiary.users.LettingIn.formToken;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.Cookie;
import io.restassured.http.Header;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

/**
 * The headers of answers of every kind, against what is published.
 *
 * <p>Sources: OWASP Secure Headers Project, the lists of headers to add and to remove (2024-07-19);
 * OWASP HTTP Headers Cheat Sheet; OWASP Application Security Verification Standard 5.0.0 (ASVS).
 */
@QuarkusTest
class WhatBrowsersAreToldTest {

  private static final Header HTTPS = new Header("X-Forwarded-Proto", "https");

  @Inject Scenario scenario;
  @Inject LettingIn letting;

  @BeforeEach
  void a_real_cluster() {
    scenario.load();
  }

  static Stream<Supplier<Response>> answersOfEveryKind() {
    return Stream.of(
        () -> Sending.get("/week"),
        () -> Sending.get("/api/churches"),
        () -> Sending.get("/api/churches/nowhere"),
        () -> Sending.get("/css/vestiary.css"),
        () -> Sending.get("/q/openapi"),
        () -> Sending.get("/nowhere"),
        () -> Sending.post("/api/churches", "{"),
        () -> browser().get("/week"),
        () -> browser().get("/q/metrics"),
        () -> browser().get("/sign-in"));
  }

  @ParameterizedTest
  @MethodSource("answersOfEveryKind")
  void every_answer_has_the_headers_that_are_published(Supplier<Response> request) {
    Response answer = request.get();

    // ASVS 3.4.3: object-src and base-uri are 'none', and scripts come from a list.
    // ASVS 3.4.6: no page is framed. Secure Headers Project: form-action 'self'.
    Map<String, String> policy = policy(answer);
    assertEquals("'none'", policy.get("default-src"));
    assertEquals("'none'", policy.get("object-src"));
    assertEquals("'none'", policy.get("base-uri"));
    assertEquals("'none'", policy.get("frame-ancestors"));
    assertEquals("'self'", policy.get("form-action"));
    assertEquals("'self'", policy.get("script-src"));
    assertEquals("'self'", policy.get("style-src"));
    assertFalse(policy.toString().contains("unsafe"), policy.toString());
    // ASVS 3.4.4; the others: Secure Headers Project, headers to add.
    assertEquals("nosniff", answer.header("X-Content-Type-Options"));
    assertEquals("DENY", answer.header("X-Frame-Options"));
    assertEquals("none", answer.header("X-Permitted-Cross-Domain-Policies"));
    assertEquals("same-origin", answer.header("Cross-Origin-Opener-Policy"));
    assertEquals("same-origin", answer.header("Cross-Origin-Resource-Policy"));
    assertEquals("require-corp", answer.header("Cross-Origin-Embedder-Policy"));
    // HTTP Headers Cheat Sheet: strict-origin-when-cross-origin or stricter (W3C Referrer Policy).
    assertTrue(
        Set.of("no-referrer", "same-origin", "strict-origin", "strict-origin-when-cross-origin")
            .contains(answer.header("Referrer-Policy")));
    for (String power : List.of("camera", "geolocation", "microphone", "payment", "usb")) {
      assertTrue(answer.header("Permissions-Policy").contains(power + "=()"), power);
    }
    // Secure Headers Project, headers to remove.
    assertNull(answer.header("Server"));
    assertNull(answer.header("X-Powered-By"));
    // ASVS 3.4.2: no other site's scripts may read anything.
    assertNull(answer.header("Access-Control-Allow-Origin"));
  }

  @Test
  void no_page_has_a_script_or_a_style_in_itself_that_the_policy_would_stop() {
    for (String page : List.of("/week", "/day", "/vestments", "/masses/new", "/settings")) {
      String html = Sending.get(page).then().statusCode(200).extract().asString();

      assertFalse(html.matches("(?s).*<script(?![^>]* src=).*"), page);
      assertFalse(html.matches("(?s).*<style[ >].*"), page);
      assertFalse(html.matches("(?s).* (style|on[a-z]+)=\".*"), page);
    }
  }

  /** RFC 6797, 7.2: the header is not sent over a way that is not secure. ASVS 3.4.1. */
  @Test
  void by_https_alone_browsers_are_told_to_come_by_no_other_way() {
    Response plain = browser().get("/sign-in");
    Response secure = browser().header(HTTPS).get("/sign-in");

    assertNull(plain.header("Strict-Transport-Security"));
    assertFalse(
        plain.headers().getValues("Content-Security-Policy").toString().contains("upgrade"));
    assertEquals("max-age=31536000; includeSubDomains", secure.header("Strict-Transport-Security"));
    assertTrue(
        secure
            .headers()
            .getValues("Content-Security-Policy")
            .contains("upgrade-insecure-requests"));
  }

  /** OWASP Session Management Cheat Sheet, "Cookies"; ASVS 3.3.1, 3.3.2 and 3.3.4. */
  @Test
  void the_cookie_is_secure_behind_a_proxy_that_adds_https() {
    letting.withPassword("piers", Role.READER);

    Cookie plain = signIn(new Header("X-Forwarded-Proto", "http"));
    Cookie secure = signIn(HTTPS);

    assertFalse(plain.isSecured());
    assertTrue(secure.isSecured());
    assertTrue(secure.isHttpOnly());
    assertEquals("Lax", secure.getSameSite());
    assertEquals("/", secure.getPath());
    assertNull(secure.getDomain());
  }

  /** OWASP Session Management Cheat Sheet, "Web Content Caching"; ASVS 14.3.2. */
  @ParameterizedTest
  @CsvSource({
    "/week, 'private, no-cache'",
    "/api/people, no-store",
    "/history, no-store",
    "/users, no-store",
    "/sign-in, no-store",
    "/api/churches/nowhere, no-store"
  })
  void no_answer_is_kept_for_others_and_what_is_of_people_not_at_all(String path, String kept) {
    assertEquals(List.of(kept), Sending.get(path).headers().getValues("Cache-Control"));
  }

  /** ASVS 14.3.1. */
  @Test
  void whoever_signs_out_takes_along_what_the_browser_has_kept() {
    String session = letting.session(letting.user(Role.READER));
    String page = browser(session).get("/week").asString();

    Response out = browser(session).formParam("form-token", formToken(page)).post("/sign-out");

    assertEquals("\"cache\", \"storage\"", out.header("Clear-Site-Data"));
  }

  private static Cookie signIn(Header way) {
    return browser()
        .header(way)
        .formParams(Map.of("login", "piers", "password", PASSWORD))
        .post("/sign-in")
        .detailedCookie("vestiary-session");
  }

  private static Map<String, String> policy(Response answer) {
    Map<String, String> policy = new java.util.HashMap<>();
    for (String directive : answer.header("Content-Security-Policy").split(";\\s*")) {
      String[] parts = directive.split(" ", 2);
      policy.put(parts[0], parts[1]);
    }
    return policy;
  }
}
