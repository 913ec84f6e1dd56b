package vestiary.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.MediaType;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
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

  private static final List<Endpoint> ENDPOINTS = Endpoint.all();

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
  void only_signing_in_is_open_to_all() {
    assertEquals(
        Set.of(
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
            "/mail/{link}"),
        ENDPOINTS.stream()
            .filter(e -> e.isOpenToAll())
            .map(Endpoint::path)
            .collect(Collectors.toSet()));
  }

  @Test
  void nobody_gets_past_the_door_of_a_real_cluster() {
    for (Endpoint endpoint : guarded()) {
      int status = call(endpoint, nobody());

      assertEquals(401, status, endpoint.toString());
    }
  }

  @Test
  void in_the_demo_nobody_changes_anything() {
    scenario.becomeDemo();
    for (Endpoint endpoint : guarded()) {
      boolean looks = endpoint.action() == Action.LOOK;

      assertEquals(!looks, call(endpoint, nobody()) == 401, endpoint.toString());
    }
  }

  @Test
  void every_role_gets_as_far_as_the_table_says() {
    Map<Role, String> tokens = new EnumMap<>(Role.class);
    for (Role role : Role.values()) {
      tokens.put(role, letting.token(letting.user(role, "ht")));
    }
    assertTrue(guarded().size() > 70, "found only " + guarded().size());

    List<String> wrong = new ArrayList<>();
    for (Endpoint endpoint : guarded()) {
      Action action = endpoint.action();
      tokens.forEach(
          (role, token) -> {
            int status = call(endpoint, LettingIn.program(token));
            boolean may = action.reach(role) != Reach.NOWHERE;
            if (may == SHUT.contains(status)) {
              wrong.add("%s as %s: %d".formatted(endpoint, role.id(), status));
            }
          });
    }
    assertEquals(List.of(), wrong);
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

        In the demo everybody may read without signing in; in a real cluster nobody may, but for the sign-in page and the server's health. The token in `VESTIARY_ADMIN_TOKEN` does what an administrator does. An intention is seen only by those who may enter it.
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

  private static List<Endpoint> guarded() {
    return ENDPOINTS.stream().filter(e -> !e.isOpenToAll()).toList();
  }

  /** A body that no address takes, so that nothing is changed behind the door. */
  private static int call(Endpoint endpoint, RequestSpecification as) {
    String path = endpoint.path().replaceAll("\\{[^}]+}", "none");
    RequestSpecification request = as.accept("*/*");
    if (endpoint.takes().equals(MediaType.MULTIPART_FORM_DATA)) {
      request.contentType(endpoint.takes()).multiPart("none", "none");
    } else if (!endpoint.reads()) {
      request.contentType(endpoint.takes()).body("[");
    }
    return request.request(endpoint.verb(), path).statusCode();
  }

  private static RequestSpecification nobody() {
    return RestAssured.given()
        .header(Credentials.nobody())
        .redirects()
        .follow(false)
        .contentType("application/json");
  }
}
