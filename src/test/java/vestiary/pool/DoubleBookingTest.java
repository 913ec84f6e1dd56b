package vestiary.pool;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/**
 * Two people can never hold one chasuble: the database itself refuses it.
 *
 * <p>Source: PostgreSQL documentation, appendix A: 23P01 is exclusion_violation.
 */
@QuarkusTest
class DoubleBookingTest {

  private static final String OVERLAP = "23P01";

  @Inject Scenario scenario;
  @Inject OwnerDatabase database;

  @BeforeEach
  void two_white_chasubles() {
    scenario.empty();
    Sending.church("ht");
    Sending.piece("HT-W1-C", "chasuble", "white", "ht");
    Sending.piece("HT-W2-C", "chasuble", "white", "ht");
  }

  @Test
  void of_two_transactions_at_once_one_wins_and_the_other_is_told() throws Exception {
    try (Connection first = begin();
        Connection second = begin()) {
      take(first, "HT-W1-C", "held", "10:00", "12:00", true);
      CompletableFuture<Void> waiting =
          CompletableFuture.runAsync(() -> taken(second, "HT-W1-C", "held", "11:00", "13:00"));
      assertThrows(TimeoutException.class, () -> waiting.get(300, TimeUnit.MILLISECONDS));

      first.commit();

      assertEquals(OVERLAP, stateOf(waiting));
      second.rollback();
    }
    assertEquals(1, count("standing"));
  }

  @Test
  void the_second_gets_it_if_the_first_gives_it_up() throws Exception {
    try (Connection first = begin();
        Connection second = begin()) {
      take(first, "HT-W1-C", "held", "10:00", "12:00", true);
      CompletableFuture<Void> waiting =
          CompletableFuture.runAsync(() -> taken(second, "HT-W1-C", "held", "11:00", "13:00"));

      first.rollback();
      waiting.get(10, TimeUnit.SECONDS);
      second.commit();
    }
    assertEquals(1, count("standing"));
  }

  @Test
  void times_that_touch_both_stand() throws SQLException {
    try (Connection connection = begin()) {
      take(connection, "HT-W1-C", "held", "10:00", "12:00", true);
      take(connection, "HT-W1-C", "out", "12:00", "14:00", true);
      take(connection, "HT-W1-C", "care", "08:00", "10:00", true);
      connection.commit();
    }
    assertEquals(3, count("standing"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"09:00 10:01", "11:59 13:00", "10:30 11:30", "09:00 13:00", "10:00 12:00"})
  void every_way_to_overlap_is_refused(String times) throws SQLException {
    String[] span = times.split(" ");
    try (Connection connection = begin()) {
      take(connection, "HT-W1-C", "planned", "10:00", "12:00", true);
      SQLException refused =
          assertThrows(
              SQLException.class,
              () -> take(connection, "HT-W1-C", "care", span[0], span[1], true));
      assertEquals(OVERLAP, refused.getSQLState());
    }
  }

  @Test
  void until_further_notice_overlaps_all_that_follows() throws SQLException {
    try (Connection connection = begin()) {
      take(connection, "HT-W1-C", "care", "10:00", null, true);
      SQLException refused =
          assertThrows(
              SQLException.class,
              () -> take(connection, "HT-W1-C", "held", "22:00", "23:00", true));
      assertEquals(OVERLAP, refused.getSQLState());
    }
  }

  @Test
  void what_stands_no_longer_blocks_nobody() throws SQLException {
    try (Connection connection = begin()) {
      take(connection, "HT-W1-C", "held", "10:00", "12:00", false);
      take(connection, "HT-W1-C", "held", "10:00", "12:00", true);
      take(connection, "HT-W1-C", "planned", "10:00", "12:00", false);
      connection.commit();
    }
    assertEquals(1, count("standing"));
    assertEquals(2, count("not standing"));
  }

  @Test
  void another_piece_is_another_matter() throws SQLException {
    try (Connection connection = begin()) {
      take(connection, "HT-W1-C", "held", "10:00", "12:00", true);
      take(connection, "HT-W2-C", "held", "10:00", "12:00", true);
      connection.commit();
    }
    assertEquals(2, count("standing"));
  }

  @Test
  void it_cannot_end_before_it_begins() throws SQLException {
    try (Connection connection = begin()) {
      for (String end : List.of("10:00", "09:00")) {
        SQLException refused =
            assertThrows(
                SQLException.class, () -> take(connection, "HT-W1-C", "held", "10:00", end, true));
        // 23514 check_violation, or 22000 where the range itself is refused first.
        assertFalse(refused.getSQLState().startsWith("00"), refused.getMessage());
        connection.rollback();
      }
    }
  }

  @Test
  void care_displaces_what_is_planned_and_held_and_leaves_the_rest() throws SQLException {
    try (Connection connection = begin()) {
      take(connection, "HT-W1-C", "planned", "10:00", "12:00", true);
      take(connection, "HT-W1-C", "held", "14:00", "16:00", true);
      take(connection, "HT-W1-C", "held", "20:00", "22:00", true);
      take(connection, "HT-W2-C", "held", "10:00", "12:00", true);
      connection.commit();
    }

    post(
            "/api/pieces/HT-W1-C/care",
            Map.of("from", "2026-12-08T11:00Z", "to", "2026-12-08T20:00Z", "reason", "Torn"))
        .then()
        .statusCode(201);

    assertEquals(
        List.of(
            "HT-W1-C 10:00 planned f",
            "HT-W1-C 11:00 care t",
            "HT-W1-C 14:00 held f",
            "HT-W1-C 20:00 held t",
            "HT-W2-C 10:00 held t"),
        rows());
  }

  @Test
  void care_that_is_refused_displaces_nothing() throws SQLException {
    try (Connection connection = begin()) {
      take(connection, "HT-W1-C", "held", "10:00", "12:00", true);
      take(connection, "HT-W1-C", "care", "12:00", "14:00", true);
      connection.commit();
    }

    post(
            "/api/pieces/HT-W1-C/care",
            Map.of("from", "2026-12-08T11:00Z", "to", "2026-12-08T13:00Z", "reason", "Torn"))
        .then()
        .statusCode(409);

    assertEquals(List.of("HT-W1-C 10:00 held t", "HT-W1-C 12:00 care t"), rows());
    get("/api/pieces/HT-W1-C").then().body("care.size()", equalTo(1));
  }

  private Connection begin() throws SQLException {
    Connection connection = database.getConnection();
    connection.setAutoCommit(false);
    return connection;
  }

  private static void taken(
      Connection connection, String piece, String state, String from, String to) {
    try {
      take(connection, piece, state, from, to, true);
    } catch (SQLException e) {
      throw new CompletionException(e);
    }
  }

  private static void take(
      Connection connection, String piece, String state, String from, String to, boolean standing)
      throws SQLException {
    String end = to == null ? "null" : "timestamptz '2026-12-08 %sZ'".formatted(to);
    try (Statement statement = connection.createStatement()) {
      statement.execute(
          """
          insert into occupation (cluster_id, id, piece_id, state, starts, ends, reason, standing, version)
          select cluster_id, gen_random_uuid(), id, '%s', timestamptz '2026-12-08 %sZ', %s, '', %s, 0
          from piece where code = '%s'
          """
              .formatted(state, from, end, standing, piece));
    }
  }

  private static String stateOf(CompletableFuture<Void> failed) {
    CompletionException failure = assertThrows(CompletionException.class, failed::join);
    return ((SQLException) failure.getCause()).getSQLState();
  }

  private int count(String which) throws SQLException {
    return Integer.parseInt(ask("select count(*)::text from occupation where " + which).get(0));
  }

  private List<String> rows() throws SQLException {
    return ask(
        """
        select code || ' ' || to_char(starts at time zone 'UTC', 'HH24:MI') || ' ' || state || ' '
               || left(standing::text, 1)
        from occupation o join piece p on p.cluster_id = o.cluster_id and p.id = o.piece_id
        order by 1
        """);
  }

  private List<String> ask(String query) throws SQLException {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(query)) {
      List<String> texts = new ArrayList<>();
      while (found.next()) {
        texts.add(found.getString(1));
      }
      return texts;
    }
  }
}
