package vestiary.sentonce;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Credentials;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** A form that is sent again is carried out once. */
@QuarkusTest
class SentOnceTest {

  private static final String KEY = "0123456789abcdef0123456789abcdef";
  private static final String DAY = "2026-12-09";
  private static final Duration PATIENCE = Duration.ofSeconds(20);

  @Inject Scenario scenario;
  @Inject OwnerDatabase database;

  @BeforeEach
  void a_church() {
    scenario.empty();
    Sending.put("/api/settings", Map.of("name", "Valley")).then().statusCode(200);
    Sending.church("ht");
  }

  @Test
  void what_is_sent_again_is_answered_as_the_first_time() {
    Response first = enter(KEY, "10:00");
    Response again = enter(KEY, "10:00");

    assertEquals(303, first.statusCode());
    assertEquals(303, again.statusCode());
    assertEquals(path(first), path(again));
    assertEquals(1, Asking.masses("ht", DAY).size());
  }

  @Test
  void with_another_key_or_none_it_is_another_form() {
    enter(KEY, "10:00");
    enter(KEY.replace('0', '9'), "10:00");
    enter("", "10:00");

    assertEquals(3, Asking.masses("ht", DAY).size());
  }

  @Test
  void what_was_refused_may_be_put_right_and_sent_again() {
    assertEquals(400, enter(KEY, "").statusCode());
    assertEquals(303, enter(KEY, "10:00").statusCode());

    assertEquals(1, Asking.masses("ht", DAY).size());
  }

  @Test
  void of_many_at_once_one_is_carried_out() {
    List<CompletableFuture<Response>> sent = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      sent.add(CompletableFuture.supplyAsync(() -> enter(KEY, "10:00")));
    }
    List<Response> answers = sent.stream().map(CompletableFuture::join).toList();

    assertTrue(
        answers.stream()
            .allMatch(
                answer ->
                    answer.statusCode() == 303
                        || answer.statusCode() == 409 && answer.header("Retry-After") != null));
    assertEquals(1, Asking.masses("ht", DAY).size());
  }

  @Test
  void of_what_was_begun_before_the_server_was_stopped_people_are_told_to_look() {
    assertEquals(303, enter(KEY, "10:00").statusCode());
    forgetAnswer();

    enter(KEY, "10:00").then().statusCode(409);

    assertEquals(1, Asking.masses("ht", DAY).size());
  }

  @Test
  void what_was_carried_out_after_its_sender_was_cut_off_is_answered_when_it_is_sent_again()
      throws Exception {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      connection.setAutoCommit(false);
      statement.execute("LOCK TABLE mass IN EXCLUSIVE MODE");
      try (Socket phone = sendAndHearNothing()) {
        until(() -> waitsForMasses(statement));
        phone.shutdownOutput();
        assertEquals(-1, phone.getInputStream().read(), "the server has noticed");
      }
      connection.commit();
    }
    until(() -> enter(KEY, "10:00").header("Retry-After") == null);

    assertEquals(303, enter(KEY, "10:00").statusCode());
    assertEquals(1, Asking.masses("ht", DAY).size());
  }

  private static boolean waitsForMasses(Statement statement) throws SQLException {
    try (ResultSet waiting =
        statement.executeQuery(
            "SELECT FROM pg_locks WHERE NOT granted AND relation = 'mass'::regclass")) {
      return waiting.next();
    }
  }

  private static void until(Callable<Boolean> isSo) throws Exception {
    long patience = System.nanoTime() + PATIENCE.toNanos();
    while (!isSo.call()) {
      assertTrue(System.nanoTime() < patience, "It never came to be so");
    }
  }

  private static Socket sendAndHearNothing() throws IOException {
    String body = "church=ht&date=" + DAY + "&time=10%3A00&minutes=30";
    Socket phone = new Socket("localhost", RestAssured.port);
    phone
        .getOutputStream()
        .write(
            ("POST /masses HTTP/1.1\r\nHost: localhost:"
                    + RestAssured.port
                    + "\r\nAuthorization: Bearer "
                    + Credentials.SERVER_TOKEN
                    + "\r\nAccept: text/html\r\nIdempotency-Key: "
                    + KEY
                    + "\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: "
                    + body.length()
                    + "\r\n\r\n"
                    + body)
                .getBytes(StandardCharsets.US_ASCII));
    return phone;
  }

  private void forgetAnswer() {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(
          "UPDATE sent_form SET answered = false, begun_at = begun_at - interval '10 minutes'");
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String path(Response answer) {
    return URI.create(answer.header("Location")).getRawPath();
  }

  private static Response enter(String key, String time) {
    return given()
        .redirects()
        .follow(false)
        .accept("text/html")
        .contentType("application/x-www-form-urlencoded; charset=UTF-8")
        .header("Idempotency-Key", key)
        .formParam("church", "ht")
        .formParam("date", DAY)
        .formParam("time", time)
        .formParam("minutes", "30")
        .post("/masses");
  }
}
