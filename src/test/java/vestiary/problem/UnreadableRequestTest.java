package vestiary.problem;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** Requests that the server cannot read at all are answered like every other refusal. */
@QuarkusTest
class UnreadableRequestTest {

  private static final List<String> LISTS =
      List.of("/api/churches", "/api/masses", "/api/patterns", "/api/pieces", "/api/sets");

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void an_empty_cluster() {
    scenario.empty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"{", "{\"slug\": }", "slug=st-anne", "{\"slug\": \"a\"", "\u0000"})
  void what_is_no_json_is_refused(String body) {
    LISTS.forEach(
        list -> refusing.refused(400, "unreadable-request", () -> Sending.post(list, body)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"[]", "5", "\"text\"", "true", "[{}]"})
  void json_of_another_form_is_refused(String body) {
    LISTS.forEach(list -> refusing.unfit(() -> Sending.post(list, body), "body"));
  }

  @Test
  void an_empty_body_and_a_null_body_are_refused() {
    for (String list : LISTS) {
      refusing.unfit(() -> given().contentType("application/json").post(list), "body");
      refusing.unfit(() -> Sending.post(list, "null"), "body");
    }
    refusing.unfit(() -> Sending.put("/api/settings", "null"), "body");
    refusing.unfit(() -> Sending.put("/api/journeys", "null"), "body");
  }

  @ParameterizedTest
  @ValueSource(strings = {"text/plain", "application/xml", "application/x-www-form-urlencoded"})
  void another_kind_of_content_is_refused(String contentType) {
    LISTS.forEach(
        list ->
            refusing.refused(
                415,
                "unreadable-request",
                () -> given().contentType(contentType).body("x").post(list)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"%zz", "%zz=a", "a=%zz", "a=%", "%", "a=%4", "a=b&%Iv", "{\"a\":\"%Iv=\"}"})
  void a_form_with_a_percent_that_stands_for_nothing_is_refused(String body) {
    refusing.refused(
        400,
        "unreadable-request",
        () ->
            given()
                .contentType("application/x-www-form-urlencoded")
                .body(body)
                .post("/api/clashes/2026-12-08/remedies/7"));
  }

  @Test
  void an_address_that_leads_nowhere_is_not_there() {
    for (String address : List.of("/api/vestments", "/api/", "/api/churches/a/b/c", "/api")) {
      refusing.notThere(() -> Sending.get(address));
    }
  }

  @Test
  void a_verb_that_an_address_does_not_take_is_refused() {
    for (String address : List.of("/api/churches", "/api/clashes", "/api/settings")) {
      refusing.refused(405, "unreadable-request", () -> Sending.delete(address));
    }
  }

  @Test
  void a_form_that_is_not_answered_is_refused() {
    refusing.refused(
        406, "unreadable-request", () -> given().accept("image/png").get("/api/churches"));
  }

  @Test
  void a_browser_that_asks_the_api_gets_a_problem_document_too() {
    refusing.notThere(() -> given().accept("text/html,*/*").get("/api/churches/nowhere"));
  }

  @Test
  void more_than_eight_megabytes_are_refused_before_they_are_sent() throws IOException {
    String answer =
        raw(
            "POST /api/masses HTTP/1.1",
            "Content-Type: application/json",
            "Content-Length: 9000000",
            "Expect: 100-continue");

    assertTrue(answer.startsWith("HTTP/1.1 413 "), answer);
    assertTrue(
        answer.toLowerCase(Locale.ROOT).contains("content-type: application/problem+json"), answer);
    assertTrue(answer.contains("\"type\":\"/problems/too-large\""), answer);
  }

  /** Sends what no proper client would, and reads until the server hangs up. */
  private static String raw(String... lines) throws IOException {
    try (Socket socket = new Socket("localhost", RestAssured.port)) {
      socket.setSoTimeout(10_000);
      String request =
          String.join("\r\n", lines) + "\r\nHost: localhost\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
