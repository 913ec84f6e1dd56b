package vestiary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import vestiary.browser.PackagedServer;
import vestiary.load.ReservingClients;
import vestiary.scenario.Credentials;
import vestiary.scenario.FreePort;
import vestiary.scenario.Scenario;

/** Starting and ending the packaged program, as whoever runs it meets it. */
class StartTest {

  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  /**
   * White in most weeks; in a fortnight without a white weekday the jubilee is in red or violet.
   */
  private static final Pattern TWO_SETS =
      Pattern.compile("Three concelebrants need (\\w+); two \\1 sets are there");

  private static final Pattern FIRST_PASSWORD =
      Pattern.compile("choose the password of \"administrator\": http://[^/]+(/welcome/\\S+)");

  /**
   * PostgreSQL is told to stop before the server ends, and needs no longer than this to be gone.
   */
  private static final Duration A_MOMENT = Duration.ofSeconds(5);

  private static final Duration LONGEST = Duration.ofSeconds(60);

  @TempDir static Path demoFolder;

  private static PackagedServer demo;

  @BeforeAll
  static void startForTheFirstTime() {
    demo = PackagedServer.start(demoFolder);
  }

  @AfterAll
  static void stop() {
    demo.close();
  }

  @Test
  void the_first_start_opens_the_demo_and_warns_of_two_sets_for_three_concelebrants() {
    String week = demo.page("/week");

    assertTrue(TWO_SETS.matcher(week).find(), week);
  }

  @Test
  void what_is_saved_is_written_through_to_the_disk() throws SQLException {
    assertEquals("on", ask(demo.databaseAddress(), "show fsync"));
    assertEquals("on", ask(demo.databaseAddress(), "show full_page_writes"));
    assertEquals("on", ask(demo.databaseAddress(), "show synchronous_commit"));
  }

  /** Else anybody could say that they come by https, or from somebody else's address. */
  @Test
  void a_server_that_nobody_told_of_a_proxy_believes_nothing_that_is_said_of_one()
      throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(demo.address("/sign-in")))
            .header("X-Forwarded-Proto", "https")
            .header("Forwarded", "proto=https")
            .build();

    HttpResponse<Void> answer =
        HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.discarding());

    assertTrue(answer.headers().firstValue("Strict-Transport-Security").isEmpty());
  }

  @Test
  void a_second_start_on_the_same_folder_says_so_and_ends_while_the_first_goes_on() {
    try (PackagedServer second = PackagedServer.launch(demoFolder, FreePort.find(), Map.of())) {
      int code = second.awaitEnd();

      assertNotEquals(0, code);
      assertTrue(second.said().contains("Vestiary is already running on the data in"));
      assertTrue(second.said().contains(demoFolder.toString()));
    }
    assertTrue(demo.isRunning());
    assertTrue(demo.page("/week").contains("Saint Anne"));
  }

  @Test
  void a_server_that_was_killed_starts_again_with_what_was_entered_held_and_who_came_in(
      @TempDir Path folder) throws Exception {
    String entered;
    String session;
    ProcessHandle leftOver;
    try (PackagedServer first = PackagedServer.start(folder)) {
      entered = first.enter("/api/masses", massAtSaintMartin()).get("id").asText();
      session = comeIn(first);
      leftOver = first.findPostgres().orElseThrow();
      ReservingClients clients = new ReservingClients(first);
      CompletableFuture<Void> work = CompletableFuture.runAsync(() -> reserve(clients));
      await(() -> clients.answers().getOrDefault("201", 0) >= 5);

      first.kill();
      clients.stop();
      work.get();
      assertTrue(leftOver.isAlive(), "the kill took PostgreSQL along; nothing is left to prove");
    }

    // then: the next start ends the PostgreSQL left over before it starts its own.
    try (PackagedServer second = PackagedServer.start(folder)) {
      assertEquals("sm", second.read("/api/masses/" + entered).get("church").asText());
      HttpRequest account =
          HttpRequest.newBuilder(URI.create(second.address("/account")))
              .header("Cookie", session)
              .build();
      assertEquals(200, CLIENT.send(account, BodyHandlers.discarding()).statusCode());
      assertFalse(leftOver.isAlive());
      assertTrue(ReservingClients.standing(second) > 0);
      assertEquals(0, ReservingClients.halves(second));
      assertEquals(0, ReservingClients.overlaps(second));
      ProcessHandle postgres = second.findPostgres().orElseThrow();

      second.stop();

      assertTimeoutPreemptively(A_MOMENT, () -> postgres.onExit().get());
    }
  }

  @Test
  void an_empty_cluster_is_opened_for_whoever_wants_no_demo(@TempDir Path folder) {
    try (PackagedServer server = PackagedServer.start(folder, "--demo=false")) {
      assertEquals(0, server.read("/api/churches").size());
      assertFalse(server.page("/week").contains("Saint Anne"));
      Matcher link = FIRST_PASSWORD.matcher(server.said());
      assertTrue(link.find(), server.said());
      assertTrue(server.page(link.group(1)).contains("you sign in as <b>administrator</b>"));
      assertFalse(server.said().contains(Credentials.SERVER_TOKEN), "the token stands in the log");
    }
  }

  @Test
  void a_database_of_ones_own_is_used_and_no_folder_made(@TempDir Path place)
      throws IOException, SQLException {
    Path folder = place.resolve("data");
    try (EmbeddedPostgres own = EmbeddedPostgres.start()) {
      String address = own.getJdbcUrl("postgres", "postgres");
      Map<String, String> environment =
          Map.of(
              "QUARKUS_DATASOURCE_JDBC_URL", address,
              "QUARKUS_DATASOURCE_USERNAME", "postgres",
              "QUARKUS_DATASOURCE_PASSWORD", "postgres");

      try (PackagedServer server = PackagedServer.start(folder, environment, "--demo=true")) {
        assertEquals(6, server.read("/api/churches").size());
        assertEquals(
            "postgres_app f f",
            ask(
                address,
                """
                select usename || ' ' || left(rolsuper::text, 1) || ' ' || left(rolbypassrls::text, 1)
                from pg_stat_activity join pg_roles on rolname = usename
                where usename <> 'postgres' and datname = 'postgres' limit 1
                """));
      }

      // Six of the large cluster, two of the small one beside it.
      assertEquals("8", ask(address, "select count(*) from church"));
      assertFalse(Files.exists(folder));
    }
  }

  @Test
  void a_port_in_use_is_named_and_no_database_left_running(@TempDir Path folder)
      throws IOException {
    try (ServerSocket other = new ServerSocket(0);
        PackagedServer server =
            PackagedServer.launch(folder, other.getLocalPort(), Map.of(), "--demo=false")) {
      int code = server.awaitEnd();

      assertNotEquals(0, code);
      assertTrue(
          server.said().contains("Port %d is in use".formatted(other.getLocalPort())),
          server.said());
      assertTrue(server.said().contains("QUARKUS_HTTP_PORT"));
      assertTrue(server.findPostgres().isEmpty());
    }
  }

  private static Map<String, ?> massAtSaintMartin() {
    return Map.of(
        "church",
        "sm",
        "start",
        LocalDate.now(Scenario.ZONE).plusDays(3) + "T06:45",
        "minutes",
        30);
  }

  private static String ask(String address, String question) throws SQLException {
    try (Connection connection = DriverManager.getConnection(address);
        Statement statement = connection.createStatement();
        ResultSet answer = statement.executeQuery(question)) {
      answer.next();
      return answer.getString(1);
    }
  }

  private static void reserve(ReservingClients clients) {
    try {
      clients.run(8, (int) LONGEST.toSeconds());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static void await(BooleanSupplier condition) {
    assertTimeoutPreemptively(
        LONGEST,
        () -> {
          while (!condition.getAsBoolean()) {
            Thread.onSpinWait();
          }
        });
  }

  /** As the first of the demo's people; the cookie of the session. */
  private static String comeIn(PackagedServer server) throws Exception {
    Matcher press =
        Pattern.compile("action=\"(/sign-in/demo[^\"]*)\".*?name=\"as\" value=\"([^\"]+)\"")
            .matcher(server.page("/sign-in"));
    assertTrue(press.find());
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(server.address(press.group(1))))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(BodyPublishers.ofString("as=" + press.group(2)))
            .build();
    HttpResponse<Void> answer = CLIENT.send(request, BodyHandlers.discarding());
    assertEquals(303, answer.statusCode());
    return answer.headers().firstValue("Set-Cookie").orElseThrow().split(";", 2)[0];
  }
}
