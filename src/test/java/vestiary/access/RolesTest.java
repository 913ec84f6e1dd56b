package vestiary.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import java.io.IOException;
import java.lang.annotation.Annotation;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

  private static final java.nio.file.Path TABLE = java.nio.file.Path.of("docs", "roles.md");

  /** Answers of the door; whatever comes after it is another matter. */
  private static final Set<Integer> SHUT = Set.of(401, 403);

  /** An address that changes nothing and leads on to the stream of changes, which never ends. */
  private static final String ENDLESS = "/live";

  @Inject Scenario scenario;
  @Inject LettingIn letting;

  /** One way to call the server. */
  record Endpoint(String verb, String path, Method method, Class<?> type) {
    boolean reads() {
      return verb.equals("GET");
    }

    /** What its body must be, for the framework refuses everything else before the door. */
    String takes() {
      return Asks.find(Consumes.class, method, type)
          .map(c -> c.value()[0])
          .orElse(MediaType.APPLICATION_JSON);
    }

    @Override
    public String toString() {
      return verb + " " + path;
    }
  }

  @BeforeEach
  void a_real_cluster() {
    scenario.load();
  }

  @Test
  void whatever_changes_something_says_which_action_it_is() {
    List<Endpoint> silent =
        endpoints().stream()
            .filter(e -> !e.reads())
            .filter(e -> Asks.find(Needs.class, e.method(), e.type()).isEmpty())
            .filter(e -> !Asks.isOpenToAll(e.method(), e.type()))
            .toList();

    assertEquals(List.of(), silent);
  }

  @Test
  void only_signing_in_is_open_to_all() {
    assertEquals(
        Set.of("/sign-in", "/sign-in/demo", "/sign-out", "/welcome/{link}"),
        endpoints().stream()
            .filter(e -> Asks.isOpenToAll(e.method(), e.type()))
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
      boolean looks = Asks.action(endpoint.method(), endpoint.type()) == Action.LOOK;

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
      Action action = Asks.action(endpoint.method(), endpoint.type());
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
    Files.writeString(java.nio.file.Path.of("target", "roles.md"), table());

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
    return endpoints().stream()
        .filter(e -> !Asks.isOpenToAll(e.method(), e.type()))
        .filter(e -> !e.path().equals(ENDLESS))
        .toList();
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

  private static List<Endpoint> endpoints() {
    return new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("vestiary")
            .stream()
            .filter(type -> type.isAnnotatedWith(Path.class))
            .flatMap(RolesTest::endpoints)
            .toList();
  }

  private static Stream<Endpoint> endpoints(JavaClass type) {
    Class<?> known = type.reflect();
    return type.getMethods().stream()
        .map(JavaMethod::reflect)
        .flatMap(method -> verb(method).map(v -> endpoint(v, method, known)).stream());
  }

  private static Optional<String> verb(Method method) {
    return Arrays.stream(method.getAnnotations())
        .map(Annotation::annotationType)
        .map(t -> t.getAnnotation(HttpMethod.class))
        .flatMap(Stream::ofNullable)
        .map(HttpMethod::value)
        .findFirst();
  }

  private static Endpoint endpoint(String verb, Method method, Class<?> type) {
    Path own = method.getAnnotation(Path.class);
    String path = type.getAnnotation(Path.class).value() + (own == null ? "" : "/" + own.value());
    return new Endpoint(verb, ("/" + path).replaceAll("/+", "/"), method, type);
  }
}
