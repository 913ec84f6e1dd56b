package vestiary.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.OwnerDatabase;

/** One calendar on two devices, which look at the same moment. */
@QuarkusTest
class TwoAskAtOnceTest {

  private static final Duration PATIENCE = Duration.ofSeconds(30);

  @Inject CalendarOfAPriest his;
  @Inject OwnerDatabase owner;

  private String mass;

  @BeforeEach
  void father_ilverton_drives_from_one_mass_to_the_next() {
    his.begin();
    mass = CalendarOfAPriest.twoOn("2026-12-10").second();
  }

  @Test
  void two_who_ask_first_of_all_begin_with_the_same_number() throws SQLException {
    assertEquals(List.of(0, 0), numbers(askedTogether()));
  }

  @Test
  void two_who_ask_right_after_a_change_read_the_same_number() throws SQLException {
    assertEquals(List.of(0), numbers(List.of(his.ask())));
    Asking.change(Asking.mass("sa", "2026-12-10T18:00"), Map.of("start", "2026-12-10T18:30"));

    List<Response> answers = askedTogether();

    assertEquals(List.of(1, 1), numbers(answers));
    assertEquals(answers.get(0).header("ETag"), answers.get(1).header("ETag"));
    assertEquals(List.of(1), numbers(List.of(his.ask())), "the change is counted once");
  }

  /** Both have seen that something has changed before either has counted it. */
  private List<Response> askedTogether() throws SQLException {
    List<CompletableFuture<Response>> asked;
    try (Connection other = owner.getConnection();
        Statement statement = other.createStatement()) {
      other.setAutoCommit(false);
      statement.execute("SELECT cluster_id FROM cluster FOR UPDATE");
      asked =
          Stream.of("telephone", "desk")
              .map(
                  device ->
                      CompletableFuture.supplyAsync(his::ask, task -> new Thread(task).start()))
              .toList();
      awaitWaiting(statement, 2);
      other.commit();
    }
    return asked.stream().map(CompletableFuture::join).toList();
  }

  private static void awaitWaiting(Statement statement, int number) throws SQLException {
    Instant last = Instant.now().plus(PATIENCE);
    int waiting = 0;
    while (waiting < number && Instant.now().isBefore(last)) {
      try (ResultSet rows =
          statement.executeQuery("SELECT count(DISTINCT pid) FROM pg_locks WHERE NOT granted")) {
        rows.next();
        waiting = rows.getInt(1);
      }
    }
    assertEquals(number, waiting, "who waits for the other");
  }

  private List<Integer> numbers(List<Response> answers) {
    return answers.stream()
        .map(answer -> Asking.only(CalendarEvents.of(answer, mass + "-drive")))
        .map(CalendarEvents::sequence)
        .toList();
  }
}
