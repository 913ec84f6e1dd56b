package vestiary.access;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Scenario;

/**
 * Addresses as no browser writes them, sent as they stand by somebody who has not signed in: none
 * is another way to what is kept, and none makes the server fail.
 *
 * <p>Source: OWASP Web Security Testing Guide, 4.5.1 (directory traversal), from memory.
 */
@QuarkusTest
class PathTricksTest {

  /** Where only those get who may look, each with a word that stands in its answer. */
  private static final List<String> KEPT =
      List.of("/week", "/api/churches", "/q/openapi", "/q/metrics", "/users");

  @Inject Scenario scenario;

  @BeforeEach
  void a_real_cluster() {
    scenario.load();
  }

  @Test
  void there_is_no_other_way_to_what_is_kept() throws IOException {
    for (String kept : KEPT) {
      String first = kept.substring(1, 2);
      for (String way :
          List.of(
              "/" + kept,
              "/." + kept,
              "/x/.." + kept,
              "/%2e" + kept,
              "/x/%2e%2e" + kept,
              "/x/..%2f" + kept.substring(1),
              "/sign-in/.." + kept,
              "/css/.." + kept,
              "/css/..%5c" + kept.substring(1),
              "/q/health/.." + kept,
              "/q/health/%2e%2e" + kept,
              "/;x=y" + kept,
              kept + "/",
              kept + "//",
              kept + "/.",
              kept + ";x=y",
              kept + "%00",
              kept + "%00.css",
              kept + "?.css",
              kept + "%20",
              kept + "%2f",
              kept.replaceFirst(first, "%" + Integer.toHexString(first.charAt(0))),
              kept.replaceFirst(first, first.toUpperCase(java.util.Locale.ROOT)))) {
        String answer = raw("GET " + way + " HTTP/1.1");

        assertFalse(answer.startsWith("HTTP/1.1 5"), way + ": " + answer);
        assertFalse(answer.startsWith("HTTP/1.1 200"), way + ": " + answer);
        assertFalse(answer.contains("Wenlow") || answer.contains("Holy Trinity"), way);
      }
    }
  }

  @Test
  void no_file_of_the_program_or_the_machine_is_shown() throws IOException {
    for (String way :
        List.of(
            "/application.properties",
            "/css/../application.properties",
            "/css/..%2fapplication.properties",
            "/css/%2e%2e/%2e%2e/application.properties",
            "/css/..%5c..%5capplication.properties",
            "/css/....//....//application.properties",
            "/css/%252e%252e/application.properties",
            "/webjars/../../application.properties",
            "/META-INF/MANIFEST.MF",
            "/db/migration/V001__keep_clusters_with_their_settings.sql",
            "/css/",
            "/js",
            "/css/../../../../../../etc/passwd",
            "/css/%2e%2e%2f%2e%2e%2f%2e%2e%2f%2e%2e%2fetc%2fpasswd",
            "/css/vestiary.css%00.png",
            "/.git/config")) {
      String answer = raw("GET " + way + " HTTP/1.1");

      assertTrue(answer.matches("(?s)HTTP/1\\.1 (400|401|404) .*"), way + ": " + answer);
      assertFalse(answer.contains("quarkus.") || answer.contains("root:"), way);
    }
  }

  @Test
  void what_is_no_request_is_refused_and_the_server_goes_on() throws IOException {
    for (String line :
        List.of(
            "GET /week HTTP/9.9",
            "GET /week%zz HTTP/1.1",
            "GET /week%c0%ae HTTP/1.1",
            "GET week HTTP/1.1",
            "TRACE /week HTTP/1.1",
            "CONNECT localhost:1 HTTP/1.1",
            "VERYLONGVERBTHATNOBODYKNOWS /week HTTP/1.1",
            "GET /" + "a".repeat(9_000) + " HTTP/1.1",
            "GET /week HTTP/1.1\r\nX: " + "a".repeat(30_000),
            "GET /week HTTP/1.1\r\nContent-Length: 3\r\nTransfer-Encoding: chunked",
            "GET /week HTTP/1.1\r\nCookie: vestiary-session=\u0001",
            "\u0000\u0001\u0002")) {
      String answer = raw(line);

      assertFalse(answer.startsWith("HTTP/1.1 200"), line + ": " + answer);
      assertFalse(answer.startsWith("HTTP/1.1 500"), line + ": " + answer);
      assertTrue(raw("GET /q/health/live HTTP/1.1").startsWith("HTTP/1.1 200"), line);
    }
  }

  /** Sends what no proper client would, and reads until the server hangs up. */
  private static String raw(String start) throws IOException {
    try (Socket socket = new Socket("localhost", RestAssured.port)) {
      socket.setSoTimeout(10_000);
      String request = start + "\r\nHost: localhost\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
