package vestiary.retention;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.EveryCluster;
import vestiary.access.Role;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Planning;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

/** What was kept long enough goes with the next night, and nothing else does. */
@QuarkusTest
class RetentionTest {

  private static final String PAGE = "/settings/retention";

  @Inject Scenario scenario;
  @Inject OwnerDatabase owner;
  @Inject LettingIn letting;
  @Inject Nights nights;
  @Inject TidyingRows rows;
  @Inject TidyUp tidy;
  @Inject EveryCluster clusters;

  @BeforeEach
  void one_of_everything_that_is_kept_for_a_time() {
    scenario.load();
    letting.leaveTracesEverywhere(letting.user(Role.READER));
    for (String serving : List.of("cosmas-ilverton", "silas-umberley")) {
      Sending.put("/api/people/%s/mail".formatted(serving), Map.of("address", "a@home.example"))
          .then()
          .statusCode(204);
    }
    Sending.put("/api/people/odo-larkspire/mail", Map.of("address", "o@home.example"))
        .then()
        .statusCode(204);
    Sending.put(
            "/api/masses/%s/serving".formatted(Asking.mass("sa", "2026-12-06T10:45").get("id")),
            Map.of("serving", List.of(Map.of("person", "odo-larkspire"))))
        .then()
        .statusCode(200);
    Planning.applied("2026-12-07", "2026-12-13");
    Object journey = Asking.list("/api/movements?from=2026-12-07&to=2026-12-13").get(0).get("id");
    Sending.post("/api/movements/%s/ask".formatted(journey), Map.of("carrier", "Greta Holm"))
        .then()
        .statusCode(200);
  }

  @Test
  void as_it_stands_nothing_is_old_enough_and_nothing_goes() throws SQLException {
    long history = count("audit");

    Browsing.page(PAGE).says("As it stands nothing goes with the next night", "Not tidied yet.");
    night();

    assertEquals(history, count("audit"));
    assertEquals(1, count("user_session"));
    assertEquals(1, count("failed_sign_in"));
    assertEquals(1, count("asking"));
    assertEquals(3, count("person_mail"));
    Browsing.page(PAGE).says("Last tidied on 30 November 2026.");
  }

  @Test
  void what_is_older_than_the_cluster_keeps_it_goes_and_the_page_says_so_first()
      throws SQLException {
    long history = count("audit");
    age("update audit set at = '2023-11-20' where id in (select id from audit limit 3)");
    age("update user_session set ends_at = '2026-10-30'");
    age("update failed_sign_in set at = '2026-11-20'");
    age("update asking set leave_by = '2025-11-20', asked_at = '2025-11-20'");
    age("update person_mail set kept_at = '2025-11-20'");

    Browsing.page(PAGE)
        .says("As it stands 3 go with the next night: all from before 30 November 2023.")
        .says("As it stands 1 goes with the next night: all from before 31 October 2026.");
    night();

    // That an asking and an address went was written down, without saying whose.
    assertEquals(history - 3 + 2, count("audit"));
    assertEquals(0, count("user_session"));
    assertEquals(0, count("failed_sign_in"));
    assertEquals(0, count("asking"));
    assertEquals(List.of("cosmas-ilverton", "odo-larkspire"), served());
  }

  @Test
  void a_cluster_that_wants_it_shorter_says_so_and_a_month_of_history_stays_in_any_case()
      throws SQLException {
    age("update audit set at = '2026-10-01' where id in (select id from audit limit 2)");
    long history = count("audit");

    Browsing.send(PAGE, Map.of("history", List.of("3")))
        .is(400)
        .faults("history", "This is 3; it must be from 30 to 3660.");
    Browsing.send(PAGE, Map.of("history", List.of("30"))).leadsTo(PAGE + "?done=saved");
    Browsing.page("/history").says("How long things are kept entered", "history, days 30");
    night();

    assertEquals(history + 1 - 2, count("audit"));

    scenario.within(
        scenario.ours(),
        () -> {
          TidyingRow forged = new TidyingRow();
          forged.day = LocalDate.of(2027, 1, 1);
          forged.at = Instant.EPOCH;
          forged.historyFrom = Instant.parse("2999-01-01T00:00:00Z");
          rows.persistAndFlush(forged);
        });
    assertEquals(history + 1 - 2, count("audit"));
  }

  @Test
  void a_day_is_tidied_once() throws SQLException {
    night();
    age("update failed_sign_in set at = '2026-11-20'");

    night();

    assertEquals(1, count("failed_sign_in"));
    assertEquals(1, count("tidying"));
  }

  @Test
  void the_nightly_job_tidies_every_cluster() throws SQLException {
    scenario.openAnother();

    scenario.asJob(() -> clusters.each(tidy::today));

    assertEquals(2, count("tidying"));
  }

  private void night() {
    nights.tidy();
  }

  private void age(String change) throws SQLException {
    try (Connection connection = owner.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute("set session_replication_role = replica");
      statement.execute(change);
    }
  }

  private long count(String table) throws SQLException {
    return Long.parseLong(ask("select count(*) from " + table).get(0));
  }

  private List<String> served() throws SQLException {
    return ask("select slug from person join person_mail using (cluster_id, id) order by slug");
  }

  private List<String> ask(String query) throws SQLException {
    try (Connection connection = owner.getConnection();
        Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(query)) {
      List<String> rows = new ArrayList<>();
      while (found.next()) {
        rows.add(found.getString(1));
      }
      return rows;
    }
  }
}
