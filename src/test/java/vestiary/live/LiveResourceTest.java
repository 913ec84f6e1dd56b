package vestiary.live;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Credentials;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** Open pages hear of what others change. */
@QuarkusTest
class LiveResourceTest {

  private static final int PATIENCE_SECONDS = 20;
  private static final int QUIET_SECONDS = 5;

  /** Whoever adds a table says whether pages show it: in a migration like V020, or here. */
  private static final List<String> SHOWN_NOWHERE =
      List.of(
          "app_user",
          "audit",
          "device_hand",
          "erasure",
          "event_stamp",
          "failed_sign_in",
          "import_change",
          "import_file",
          "letter",
          "letter_wish",
          "mass_change",
          "mass_origin",
          "mass_stamp",
          "outside_sign_in",
          "overdue_mail",
          "passkey_challenge",
          "person_mail",
          "photo_picture",
          "piece_value",
          "plan_basis",
          "regrouping",
          "retention",
          "sacristy_change",
          "sacristy_told",
          "sent_form",
          "shared_device",
          "taken_backup",
          "telling",
          "tidying",
          "user_church",
          "user_device",
          "user_link",
          "user_mail",
          "user_outside",
          "user_passkey",
          "user_session",
          "user_token",
          "week_told");

  @Inject Scenario scenario;
  @Inject OwnerDatabase database;

  @TestHTTPResource("/live")
  URI live;

  private static boolean loaded;

  private final BlockingQueue<String> heard = new LinkedBlockingQueue<>();
  private CompletableFuture<?> listening;

  @BeforeEach
  void somebody_listens() throws Exception {
    if (!loaded) {
      scenario.load();
      loaded = true;
      listen("");
      while (heard.poll(QUIET_SECONDS, TimeUnit.SECONDS) != null) {
        // What loading announced is heard to its end; from then on each test hears its own.
      }
      nobody_listens_any_more();
    }
    listen("");
    assertEquals(":here", awaitLine());
  }

  private void listen(String query) {
    heard.clear();
    listening =
        HttpClient.newHttpClient()
            .sendAsync(
                HttpRequest.newBuilder(URI.create(live + query))
                    .header("Authorization", "Bearer " + Credentials.SERVER_TOKEN)
                    .build(),
                BodyHandlers.ofLines())
            .thenAcceptAsync(answer -> answer.body().filter(l -> !l.isBlank()).forEach(heard::add));
  }

  @AfterEach
  void nobody_listens_any_more() {
    listening.cancel(true);
  }

  @Test
  void a_church_that_is_entered_is_heard_of() throws Exception {
    Sending.church("xa");

    assertEquals("event:change", awaitLine());
  }

  @Test
  void what_was_changed_while_a_page_was_on_its_way_is_heard_afterwards() throws Exception {
    Sending.church("xb");
    assertEquals("event:change", awaitLine());
    nobody_listens_any_more();

    listen("?age=60000");

    String line = awaitLine();
    assertEquals("event:change", line.equals(":here") ? awaitLine() : line);
  }

  @Test
  void an_age_that_is_none_is_refused() {
    given().get("/live?age=-1").then().statusCode(400);
    given().get("/live?age=soon").then().statusCode(400);
  }

  @Test
  void what_another_cluster_changes_is_not_heard() throws Exception {
    UUID other = scenario.openAnother();
    heard.clear();

    execute("update cluster set name = name where cluster_id = '%s'".formatted(other));
    Sending.church("xc");
    awaitLine();

    // One bell for our own church; the other cluster's came before it and would stand here too.
    assertEquals(0, bells());
  }

  @Test
  void what_is_taken_back_is_not_heard() throws Exception {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute("begin");
      statement.execute("update cluster set name = name");
      statement.execute("rollback");
    }
    Sending.church("xd");
    awaitLine();

    assertEquals(0, bells());
  }

  @Test
  void after_the_database_was_away_everybody_looks_again() throws Exception {
    execute("select pg_terminate_backend(pid) from pg_stat_activity where query like 'LISTEN %'");

    assertEquals("event:change", awaitLine());
  }

  @Test
  void every_table_that_a_page_shows_rings_the_bell() throws SQLException {
    String silent =
        """
        select c.relname from pg_class c join pg_namespace n on n.oid = c.relnamespace
        where n.nspname = 'public' and c.relkind in ('r', 'p')
          and exists (select 1 from pg_attribute a
                      where a.attrelid = c.oid and a.attname = 'cluster_id')
          and not exists (select 1 from pg_trigger t
                          where t.tgrelid = c.oid and t.tgname = 'announce_change')
        order by 1
        """;
    List<String> tables = new ArrayList<>();
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(silent)) {
      while (found.next()) {
        tables.add(found.getString(1));
      }
    }

    assertEquals(SHOWN_NOWHERE, tables);
  }

  private long bells() {
    return heard.stream().filter("event:change"::equals).count();
  }

  private String awaitLine() throws InterruptedException {
    String line = heard.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
    assertTrue(line != null, "nothing was heard");
    return line;
  }

  private void execute(String sql) throws SQLException {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }
}
