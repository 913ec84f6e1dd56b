package vestiary.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.http.Headers;
import io.restassured.specification.RequestSpecification;
import io.restassured.specification.SpecificationQuerier;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.MediaType;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Credentials;
import vestiary.scenario.Scenario;
import vestiary.users.LettingIn;

/**
 * Every page and every address of the API, found by its annotations, is called by nobody and by
 * every role: the door opens where the table of roles says so, and nowhere else.
 */
@QuarkusTest
class RolesTest {

  private static final Path TABLE = Path.of("docs", "roles.md");

  /** Answers of the door; whatever comes after it is another matter. */
  private static final Set<Integer> SHUT = Set.of(401, 403);

  private static final List<Endpoint> ENDPOINTS = Endpoint.withStreams();

  /** The framework's own, and whether they are open to all. */
  private static final Map<String, Boolean> BACK_ROOMS =
      Map.of(
          "/q/openapi", false,
          "/q/metrics", false,
          "/q/health/live", true,
          "/css/vestiary.css", true);

  private static final String NOBODY = "Nobody";
  private static final String NOBODY_IN_DEMO = "Nobody, in the demo";
  private static final String SERVER = "Token of the server";

  /** Whatever comes here is kept and answered with the form for signing in, which is a 401. */
  private static final String ASKS_TO_SIGN_IN = "/sign-in/kept";

  private static final Path REPORT = Path.of("target", "surefire-reports", "roles-matrix.md");

  @Inject Scenario scenario;
  @Inject LettingIn letting;

  @BeforeEach
  void a_real_cluster() {
    scenario.load();
  }

  @Test
  void whatever_changes_something_says_which_action_it_is() {
    List<Endpoint> silent =
        ENDPOINTS.stream()
            .filter(e -> !e.reads())
            .filter(e -> Asks.find(Needs.class, e.method(), e.type()).isEmpty())
            .filter(e -> !e.isOpenToAll())
            .toList();

    assertEquals(List.of(), silent);
  }

  @Test
  void
      only_signing_in_a_choice_of_language_published_mass_times_and_ending_letters_are_open_to_all() {
    assertEquals(
        Set.of(
            "/language",
            "/sign-in",
            "/sign-in/demo",
            "/sign-in/kept",
            "/sign-in/outside",
            "/sign-in/outside/go",
            "/sign-in/outside/return",
            "/sign-in/passkey",
            "/sign-in/passkey/challenge",
            "/sign-out",
            "/welcome/{link}",
            "/recovery",
            "/mail/{link}",
            "/letters/stop/{link}",
            "/letters/stop/{link}/choice",
            "/times",
            "/api/times",
            "/times/door",
            "/times/bulletin.txt",
            "/feeds/times.ics"),
        ENDPOINTS.stream()
            .filter(e -> e.isOpenToAll())
            .map(Endpoint::path)
            .collect(Collectors.toSet()));
  }

  @Test
  void every_cell_of_the_matrix_of_addresses_and_visitors_is_as_the_table_of_roles_says() {
    Matrix matrix = new Matrix(everybody());
    ENDPOINTS.forEach(endpoint -> matrix.expect(endpoint.toString()));
    BACK_ROOMS.forEach((room, open) -> matrix.expect("GET " + room));
    List<String> wrong = new ArrayList<>();
    for (Role role : Role.values()) {
      String token = letting.token(letting.user(role, "ht"));
      wrong.addAll(
          walk(
              matrix,
              role.word(),
              () -> LettingIn.program(token),
              a -> a.reach(role) != Reach.NOWHERE));
    }
    wrong.addAll(
        walk(matrix, SERVER, RestAssured::given, action -> action != Action.KEEP_OWN_ACCOUNT));
    wrong.addAll(walk(matrix, NOBODY, RolesTest::nobody, action -> false));
    scenario.becomeDemo();
    wrong.addAll(walk(matrix, NOBODY_IN_DEMO, RolesTest::nobody, action -> action == Action.LOOK));

    matrix.write(REPORT);
    assertEquals(List.of(), wrong);
    assertEquals(List.of(), matrix.untested());
    assertTrue(ENDPOINTS.size() > 80, "found only " + ENDPOINTS.size());
  }

  /** Calls every address as that visitor; answers where the door was not as it should be. */
  private static List<String> walk(
      Matrix matrix, String visitor, Supplier<RequestSpecification> as, Predicate<Action> may) {
    List<String> wrong = new ArrayList<>();
    for (Endpoint endpoint : ENDPOINTS) {
      int status = call(endpoint, as.get());
      matrix.put(endpoint.toString(), visitor, status);
      boolean passes = endpoint.isOpenToAll() || may.test(endpoint.action());
      boolean isShut = SHUT.contains(status) && !endpoint.path().equals(ASKS_TO_SIGN_IN);
      if (passes == isShut || !passes && visitor.startsWith(NOBODY) && status != 401) {
        wrong.add("%s as %s: %d".formatted(endpoint, visitor, status));
      }
    }
    BACK_ROOMS.forEach(
        (room, open) -> {
          int status = as.get().get(room).statusCode();
          matrix.put("GET " + room, visitor, status);
          if (status != (open || may.test(Action.LOOK) ? 200 : 401)) {
            wrong.add("%s as %s: %d".formatted(room, visitor, status));
          }
        });
    return wrong;
  }

  private static List<String> everybody() {
    return Stream.of(
            Stream.of(NOBODY, NOBODY_IN_DEMO, SERVER), Stream.of(Role.values()).map(Role::word))
        .flatMap(names -> names)
        .toList();
  }

  @Test
  void the_table_of_roles_is_printed_as_it_is() throws IOException {
    Files.writeString(Path.of("target", "roles.md"), table());

    assertEquals(
        table(), Files.readString(TABLE), "docs/roles.md differs from target/roles.md; copy it");
  }

  private static String table() {
    StringBuilder table =
        new StringBuilder(
            """
            # Who may do what

            One role a user; a sacristan has churches. The table is the code's own (`Action`); a test prints it here and calls every page and every address of the API as every role.

            """);
    table.append("| | ");
    Stream.of(Role.values()).forEach(r -> table.append(r.word()).append(" | "));
    table.append("\n|---|").append("---|".repeat(Role.values().length)).append('\n');
    for (Action action : Action.values()) {
      table.append("| ").append(action.words()).append(" | ");
      Stream.of(Role.values()).forEach(r -> table.append(word(action.reach(r))).append(" | "));
      table.append('\n');
    }
    table.append(
        """

        In the demo everybody may read without signing in; in a real cluster nobody may, but for the sign-in page, published Mass times and the server's health. The token in `VESTIARY_ADMIN_TOKEN` does what an administrator does. Whoever looks into another cluster that lets them has the last column there, whatever they are at home, and keeps their account at home. An intention is seen only by those who may enter it.
        """);
    return table.toString().replace(" | \n", " |\n");
  }

  private static String word(Reach reach) {
    return switch (reach) {
      case EVERYWHERE -> "yes";
      case OWN_CHURCHES -> "own churches";
      case NOWHERE -> "–";
    };
  }

  /** A body that no address takes, so that nothing is changed behind the door. */
  private static int call(Endpoint endpoint, RequestSpecification as) {
    if (endpoint.isEndless()) {
      return begin(endpoint, as);
    }
    String path = endpoint.path().replaceAll("\\{[^}]+}", "none");
    RequestSpecification request = as.accept("*/*");
    if (endpoint.takes().equals(MediaType.MULTIPART_FORM_DATA)) {
      request.contentType(endpoint.takes()).multiPart("none", "none");
    } else if (!endpoint.reads()) {
      request.contentType(endpoint.takes());
      if (endpoint.takes().equals("application/zip")) {
        request.body("[".getBytes(StandardCharsets.UTF_8));
      } else {
        request.body("[");
      }
    }
    return request.request(endpoint.verb(), path).statusCode();
  }

  /** How a stream begins, which would not end. */
  private static int begin(Endpoint endpoint, RequestSpecification as) {
    Headers headers = SpecificationQuerier.query(as).getHeaders();
    HttpRequest.Builder request =
        HttpRequest.newBuilder(
            URI.create("http://localhost:" + RestAssured.port + endpoint.path()));
    if (headers.hasHeaderWithName("Authorization")) {
      request.header("Authorization", headers.getValue("Authorization"));
    } else if (!headers.hasHeaderWithName(Credentials.nobody().getName())) {
      request.header("Authorization", "Bearer " + Credentials.SERVER_TOKEN);
    }
    try {
      HttpResponse<InputStream> answer =
          HttpClient.newHttpClient().send(request.build(), BodyHandlers.ofInputStream());
      answer.body().close();
      return answer.statusCode();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private static RequestSpecification nobody() {
    return RestAssured.given()
        .header(Credentials.nobody())
        .redirects()
        .follow(false)
        .contentType("application/json");
  }
}
