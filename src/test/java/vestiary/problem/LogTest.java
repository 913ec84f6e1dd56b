package vestiary.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.users.LettingIn.PASSWORD;
import static vestiary.users.LettingIn.browser;
import static vestiary.users.LettingIn.program;
import static vestiary.users.LettingIn.tries;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.scenario.Credentials;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

/**
 * What the server writes into its log, whatever happens: no name, no address, nothing by which
 * somebody gets in.
 *
 * <p>Source: OWASP Logging Cheat Sheet, "Data to exclude"; OWASP Application Security Verification
 * Standard 5.0.0, 16.2.5.
 */
@QuarkusTest
class LogTest {

  private static final String NAME = "Osbert Quillfeather";
  private static final String MAIL = "quillfeather@home.example";

  @Inject Scenario scenario;
  @Inject LettingIn letting;
  @Inject OwnerDatabase database;

  @ConfigProperty(name = "quarkus.http.access-log.pattern")
  String accessLog;

  private final Queue<String> lines = new ConcurrentLinkedQueue<>();
  private final Handler reader =
      new Handler() {
        @Override
        public void publish(LogRecord line) {
          StringWriter whole = new StringWriter();
          whole.append(new SimpleFormatter().formatMessage(line));
          if (line instanceof org.jboss.logmanager.ExtLogRecord ext) {
            whole.append(' ').append(ext.getFormattedMessage());
          }
          if (line.getThrown() != null) {
            line.getThrown().printStackTrace(new PrintWriter(whole, true));
          }
          lines.add(whole.toString());
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
      };

  @BeforeEach
  void somebody_reads_the_log() {
    scenario.load();
    Logger.getLogger("").addHandler(reader);
  }

  @AfterEach
  void nobody_reads_it_any_more() throws SQLException {
    Logger.getLogger("").removeHandler(reader);
    change("alter table church drop constraint if exists of_this_test");
    change("alter table person_mail drop constraint if exists of_this_test");
    change("alter table app_user drop constraint if exists of_this_test");
  }

  @Test
  void a_fault_is_told_with_its_place_and_reference_and_without_the_row_that_caused_it()
      throws SQLException {
    change("alter table church add constraint of_this_test check (name <> '%s')".formatted(NAME));
    change(
        "alter table person_mail add constraint of_this_test check (address <> '%s')"
            .formatted(MAIL));
    change(
        "alter table app_user add constraint of_this_test check (login <> '%s')"
            .formatted("osbert.quillfeather"));
    String person = Sending.get("/api/people").path("find { it.role == 'priest' }.slug");

    Map<String, String> church = Map.of("slug", "oq", "name", NAME);
    String reference =
        Sending.post("/api/churches", church).then().statusCode(500).extract().path("detail");
    Sending.put("/api/people/%s/mail".formatted(person), Map.of("address", MAIL))
        .then()
        .statusCode(500);
    io.restassured.RestAssured.given()
        .formParams(Map.of("login", "osbert.quillfeather", "name", NAME, "role", "reader"))
        .post("/users")
        .then()
        .statusCode(500);

    assertTrue(said().contains("in ChurchResource.enter"), said());
    assertTrue(said().contains(reference.replaceAll(".*reference ([0-9a-f]+)\\..*", "$1")), said());
    assertSilent(NAME, "Quillfeather", "quillfeather", MAIL, person);
  }

  @Test
  void whoever_comes_in_by_whatever_way_leaves_nothing_by_which_another_could() {
    letting.withPassword("osbert.quillfeather", Role.ADMINISTRATOR);
    String session = tries("osbert.quillfeather", PASSWORD).getCookie("vestiary-session");
    tries("osbert.quillfeather", "a wrong password").then().statusCode(400);
    String token = letting.token(letting.user("token", Role.READER));
    String link = letting.link(letting.user("link", Role.READER));
    program(token).get("/api/people").then().statusCode(200);
    program(token + "x").get("/api/people").then().statusCode(401);
    browser(session).get("/account?name=" + NAME).then().statusCode(200);
    browser().get("/welcome/" + link).then().statusCode(200);
    browser().get("/welcome/" + link + "x").then().statusCode(404);
    Sending.post("/api/churches", "{\"slug\": \"" + NAME + "\", \"name\": [}")
        .then()
        .statusCode(400);

    assertSilent(
        NAME,
        "Quillfeather",
        "quillfeather",
        PASSWORD,
        "a wrong password",
        session,
        token,
        link,
        Credentials.SERVER_TOKEN);
  }

  @Test
  void whoever_has_requests_written_down_gets_neither_query_nor_address_nor_name() {
    for (String part : List.of("%q", "%r", "%h", "%u", "%{i,", "%{c,", "%{q,", "common", "long")) {
      assertFalse(accessLog.contains(part), part);
    }
    assertEquals("%m %U %s %b", accessLog);
  }

  private void assertSilent(String... secrets) {
    for (String secret : secrets) {
      assertFalse(said().contains(secret), secret + " stands in the log: " + said());
    }
  }

  private String said() {
    return String.join("\n", lines);
  }

  private void change(String change) throws SQLException {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(change);
    }
  }
}
