package vestiary.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.RandomGenerator;
import net.jqwik.api.sessions.JqwikSession;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Credentials;
import vestiary.scenario.Planning;
import vestiary.scenario.Scenario;

/**
 * Whatever is sent to whichever address of the server's own OpenAPI document, by the administrator,
 * who gets everywhere: the server never fails, and what it refuses it refuses with a sentence.
 *
 * <p>Source: RFC 9457, 3 (problem documents); RFC 9110, 15.5 and 15.6 (whose fault 4xx and 5xx
 * are).
 */
@QuarkusTest
class AnyRequestTest {

  private static final int REQUESTS = 5_500;
  private static final long SEED = 20261126;

  /** So often everything is put back, since much is removed on the way. */
  private static final int FRESH_EVERY = 500;

  private static final Path REPORT = Path.of("target", "surefire-reports", "any-request.md");

  private static final Pattern PLAN = Pattern.compile("/plans/[0-9a-f-]{36}$");

  private static final List<String> LISTS =
      List.of(
          "/api/churches",
          "/api/calendars",
          "/api/journeys",
          "/api/masses?from=2026-12-05&to=2026-12-09",
          "/api/patterns",
          "/api/people",
          "/api/pieces",
          "/api/sets",
          "/api/settings",
          "/api/propers",
          "/api/clashes?from=2026-11-30&to=2026-12-31",
          "/api/movements?from=2026-12-07&to=2026-12-13");

  @Inject Scenario scenario;

  private final HttpClient client = HttpClient.newHttpClient();
  private final ObjectMapper json = new ObjectMapper();

  @Test
  void nothing_that_is_sent_makes_the_server_fail_and_every_refusal_is_a_sentence()
      throws IOException {
    scenario.load();
    ApiDescription api = new ApiDescription(read("/q/openapi?format=json"));
    SeenWords seen = seen();
    assertTrue(api.operations().size() > 70, "found only " + api.operations().size());

    Map<String, Map<Integer, Integer>> counts = new TreeMap<>();
    List<String> wrong = new ArrayList<>();
    JqwikSession.run(
        () -> {
          Random random = new Random(SEED);
          List<RandomGenerator<AnyRequest>> generators = generators(api, seen);
          for (int i = 0; i < REQUESTS; i++) {
            if (i > 0 && i % FRESH_EVERY == 0) {
              scenario.load();
            }
            AnyRequest request = generators.get(i % generators.size()).next(random).value();
            HttpResponse<String> answer = send(request);
            counts
                .computeIfAbsent(request.operation().toString(), o -> new TreeMap<>())
                .merge(answer.statusCode(), 1, Integer::sum);
            cancelPlan(answer);
            fault(request, answer).lines().forEach(wrong::add);
          }
        });

    Files.writeString(REPORT, report(counts));
    assertEquals(List.of(), wrong);
    assertEquals(api.operations().size(), counts.size(), "some address was never asked");
  }

  /** Two for each address: one that sends much that is wrong, one that sends little. */
  private static List<RandomGenerator<AnyRequest>> generators(ApiDescription api, SeenWords seen) {
    return Stream.of(new AnyJson(api, seen, 3), new AnyJson(api, seen, 60))
        .flatMap(
            json ->
                api.operations().stream()
                    .map(operation -> AnyRequest.to(operation, json, seen).generator(REQUESTS)))
        .toList();
  }

  /** What is there, by the names that the API gives it. */
  private SeenWords seen() {
    SeenWords seen = new SeenWords();
    String plan = Planning.applied("2026-12-07", "2026-12-13").get("id").toString();
    List.of("plans/", "plan").forEach(name -> seen.note(name, plan));
    LISTS.forEach(list -> seen.readList(list, read(list)));
    for (String day : List.of("2026-12-08", "2026-12-13")) {
      List.of("?from", "from", "date").forEach(name -> seen.note(name, day));
    }
    for (String day : List.of("2026-12-13", "2026-12-25", "2026-12-31")) {
      List.of("?to", "to", "date").forEach(name -> seen.note(name, day));
    }
    List.of("0", "1", "2").forEach(n -> seen.note("n", n));
    List.of("2026", "2027").forEach(year -> seen.note("year", year));
    return seen;
  }

  private JsonNode read(String address) {
    try {
      return json.readTree(RestAssured.get(address).then().statusCode(200).extract().asString());
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private HttpResponse<String> send(AnyRequest request) {
    HttpRequest.Builder sent =
        HttpRequest.newBuilder(
                URI.create("http://localhost:" + RestAssured.port + request.address()))
            .header("Authorization", "Bearer " + Credentials.SERVER_TOKEN)
            .header("Accept", request.accepts())
            .method(
                request.operation().verb(),
                request.body().isEmpty()
                    ? BodyPublishers.noBody()
                    : BodyPublishers.ofString(request.body(), StandardCharsets.UTF_8));
    if (!request.contentType().isEmpty()) {
      sent.header("Content-Type", request.contentType());
    }
    return send(sent.build());
  }

  /** What was asked for in earnest would be worked out for minutes beside the requests. */
  private void cancelPlan(HttpResponse<String> answer) {
    Matcher plan = PLAN.matcher(answer.headers().firstValue("Location").orElse(""));
    if (plan.find()) {
      RestAssured.delete("/api" + plan.group());
    }
  }

  private HttpResponse<String> send(HttpRequest request) {
    try {
      return client.send(request, BodyHandlers.ofString());
    } catch (IOException e) {
      throw new IllegalStateException("no answer to " + request, e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  /** What is wrong with an answer, in one line; empty if nothing is. */
  private String fault(AnyRequest request, HttpResponse<String> answer) {
    int status = answer.statusCode();
    String type = answer.headers().firstValue("Content-Type").orElse("");
    boolean isRefused = status >= 400 && status < 500;
    boolean isRight =
        status < 400
            || isRefused && isPageWithHeading(request, type, answer.body())
            || isRefused
                && type.equals("application/problem+json")
                && isProblem(status, answer.body());
    return isRight ? "" : "%d %s to %s".formatted(status, type, request).replaceAll("\\R", " ");
  }

  /** A form is shown again with what is wrong; people with a browser get a page. */
  private static boolean isPageWithHeading(AnyRequest request, String type, String body) {
    return type.startsWith("text/html")
        && !request.address().startsWith("/api/")
        && body.contains("<h1");
  }

  private boolean isProblem(int status, String body) {
    try {
      JsonNode problem = json.readTree(body);
      return problem.path("status").asInt() == status
          && problem.path("type").asText().startsWith("/problems/")
          && !problem.path("title").asText().isBlank()
          && problem.path("detail").asText().strip().matches("(?s).{10,}[.!?]");
    } catch (IOException e) {
      return false;
    }
  }

  private static String report(Map<String, Map<Integer, Integer>> counts) {
    StringBuilder report =
        new StringBuilder(
            "# %d requests by the OpenAPI document%n%n| address | answers |%n|---|---|%n"
                .formatted(REQUESTS));
    counts.forEach(
        (operation, statuses) ->
            report.append(
                "| %s | %s |%n".formatted(operation, statuses.toString().replaceAll("[{}]", ""))));
    return report.toString();
  }
}
