package vestiary.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.users.LettingIn.browser;
import static vestiary.users.LettingIn.nobody;
import static vestiary.users.LettingIn.program;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.ByteBuffer;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Base64;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Credentials;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Scenario;
import vestiary.users.LettingIn;

/**
 * Cookies and tokens that were made up, changed, ended, or are good somewhere else.
 *
 * <p>Source: OWASP Application Security Verification Standard 5.0.0, 7.2 to 7.4.
 */
@QuarkusTest
class ForgedTest {

  @Inject Scenario scenario;
  @Inject LettingIn letting;
  @Inject OwnerDatabase database;

  private UUID user;

  @BeforeEach
  void a_real_cluster_with_one_user() {
    scenario.load();
    user = letting.user("piers", Role.ADMINISTRATOR);
  }

  @Test
  void a_token_that_is_not_exactly_right_is_nobodys() {
    String good = letting.token(user);
    assertEquals(200, program(good).get("/api/churches").statusCode());

    for (String forged : forged(good)) {
      assertEquals(401, program(forged).get("/api/churches").statusCode(), forged);
    }
    for (String header : List.of("", "Bearer", "Basic " + good, good, "Bearer  x y", "bearer\t")) {
      int status = nobody().header("Authorization", header).get("/api/churches").statusCode();
      assertEquals(401, status, header);
    }
  }

  @Test
  void a_cookie_that_is_not_exactly_right_is_nobodys() {
    String good = letting.session(user);
    assertEquals(200, browser(good).get("/account").statusCode());

    for (String forged : forged(good)) {
      assertEquals(303, browser(forged).get("/account").statusCode(), forged);
    }
  }

  @Test
  void neither_does_for_the_other_nor_does_the_token_of_the_server_as_a_cookie() {
    String token = letting.token(user);
    String session = letting.session(user);
    String link = letting.link(user);

    assertEquals(401, program(session).get("/api/churches").statusCode());
    assertEquals(401, program(link).get("/api/churches").statusCode());
    for (String other : List.of(token, link, Credentials.SERVER_TOKEN)) {
      assertEquals(303, browser(other).get("/account").statusCode());
    }
    browser().get("/welcome/" + session).then().statusCode(404);
    browser().get("/welcome/" + token).then().statusCode(404);
  }

  @Test
  void what_has_ended_opens_nothing() throws SQLException {
    String token = letting.token(user);
    String session = letting.session(user);
    String link = letting.link(user);
    for (String table : List.of("user_token", "user_session", "user_link")) {
      change("update %s set ends_at = timestamptz '2026-11-30 11:59Z'".formatted(table));
    }

    assertEquals(401, program(token).get("/api/churches").statusCode());
    assertEquals(303, browser(session).get("/account").statusCode());
    assertEquals(404, browser().get("/welcome/" + link).statusCode());
  }

  @Test
  void whoever_is_let_in_no_more_is_out_at_once_by_every_way() throws SQLException {
    String token = letting.token(user);
    String session = letting.session(user);
    String link = letting.link(user);
    change("delete from app_user where id = '%s'".formatted(user));

    assertEquals(401, program(token).get("/api/churches").statusCode());
    assertEquals(303, browser(session).get("/account").statusCode());
    assertEquals(404, browser().get("/welcome/" + link).statusCode());
  }

  @Test
  void what_another_cluster_gave_opens_nothing_here_whichever_cluster_it_names() {
    String token = letting.token(user);
    String session = letting.session(user);
    UUID theirs = scenario.becomeAnother();

    for (UUID named : List.of(scenario.ours(), theirs, UUID.randomUUID())) {
      assertEquals(401, program(withCluster(token, named)).get("/api/churches").statusCode());
      assertEquals(303, browser(withCluster(session, named)).get("/account").statusCode());
    }
  }

  /** One letter changed, cut, doubled, another cluster in front, other ways to write the same. */
  private List<String> forged(String good) {
    char last = good.charAt(good.length() - 1);
    return Stream.of(
            "x",
            "null",
            "undefined",
            "../../etc/passwd",
            "' or 1=1 --",
            good.substring(1),
            good.substring(0, good.length() - 4),
            good + good,
            (good.charAt(0) == 'A' ? 'B' : 'A') + good.substring(1),
            good.substring(0, good.length() - 1) + (last == 'A' ? 'B' : 'A'),
            good.toUpperCase(java.util.Locale.ROOT),
            good + "=",
            withCluster(good, UUID.randomUUID()),
            withCluster(good, new UUID(0, 0)),
            Secret.fresh(scenario.ours()).text(),
            "A".repeat(64),
            "A".repeat(4_000))
        .toList();
  }

  private static String withCluster(String secret, UUID cluster) {
    byte[] bytes = Base64.getUrlDecoder().decode(secret);
    ByteBuffer.wrap(bytes)
        .putLong(cluster.getMostSignificantBits())
        .putLong(cluster.getLeastSignificantBits());
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  private void change(String change) throws SQLException {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(change);
    }
  }
}
