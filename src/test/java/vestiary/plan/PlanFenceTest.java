package vestiary.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Planning;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** A plan is begun by one copy of the server after another, and two may think it theirs. */
@QuarkusTest
class PlanFenceTest {

  @Inject Scenario scenario;
  @Inject RunPlan run;
  @Inject OwnerDatabase database;

  private final UUID plan = UUID.fromString("01900000-0000-7000-8000-000000000001");

  @BeforeEach
  void a_plan_that_no_queue_knows() {
    scenario.load();
    change(
        """
        insert into plan (cluster_id, id, first_date, last_date, status, failure, cancelled, starts,
                          requested_at, version)
        values ('%s', '%s', '2026-12-07', '2026-12-13', 'queued', '', false, 0, now(), 0)
        """
            .formatted(scenario.ours(), plan));
  }

  @Test
  void a_copy_that_was_thought_dead_writes_nothing_over_its_successor() {
    begin(
        () -> {
          change("update plan set starts = 7");
          return false;
        });

    assertEquals("running", ask("select status from plan"));
    assertNull(ask("select result::text from plan"));
  }

  @Test
  void a_copy_that_stops_hands_the_plan_on_and_the_next_one_ends_it() {
    CompletionException stopped = assertThrows(CompletionException.class, () -> begin(() -> true));
    assertTrue(stopped.getCause() instanceof CancellationException, stopped.toString());
    assertEquals("running", ask("select status from plan"));

    begin(() -> false);

    assertEquals("proven", ask("select status from plan"));
    assertEquals("2", ask("select starts::text from plan"));
  }

  @Test
  void a_plan_that_took_three_copies_down_is_not_begun_again() {
    change("update plan set starts = 3, status = 'running'");

    begin(() -> false);

    assertEquals("failed", ask("select status from plan"));
    assertTrue(ask("select failure from plan").contains("fewer days"));
  }

  @Test
  void a_plan_that_is_cancelled_while_it_waits_is_over_at_once() {
    Sending.delete("/api/plans/" + plan).then().statusCode(204);

    begin(() -> false);

    assertEquals("stopped", Planning.finished(plan.toString()).get("status"));
    assertEquals("0", ask("select starts::text from plan"));
  }

  @Test
  void cancelling_at_work_keeps_the_best_so_far() {
    begin(
        () -> {
          Sending.delete("/api/plans/" + plan).then().statusCode(204);
          return false;
        });

    Map<String, Object> found = Planning.finished(plan.toString());
    assertTrue(Planning.list(found, "assignments").size() > 30, found.toString());
  }

  @Test
  void a_hold_that_is_made_at_the_same_moment_wins_and_nothing_of_the_plan_is_kept()
      throws SQLException {
    begin(() -> false);
    String worn = ask("select result -> 'worn' -> 0 ->> 'piece' from plan");
    try (Connection other = database.getConnection();
        Statement statement = other.createStatement()) {
      other.setAutoCommit(false);
      statement.execute(
          """
          insert into occupation (cluster_id, id, piece_id, state, starts, ends, reason, standing, version)
          select cluster_id, gen_random_uuid(), id, 'held', '2026-12-01', '2026-12-31', '', true, 0
          from piece where code = '%s'
          """
              .formatted(worn));
      CompletableFuture<Integer> applied =
          CompletableFuture.supplyAsync(
              () -> Sending.post("/api/plans/%s/apply".formatted(plan), Map.of()).statusCode());
      while (!applied.isDone() && noneWaits()) {
        Thread.onSpinWait();
      }
      assertFalse(applied.isDone(), "it did not wait for the hold");
      other.commit();

      assertEquals(409, applied.join());
    }
    assertEquals("0", ask("select count(*)::text from occupation where state = 'planned'"));
    assertEquals("0", ask("select count(*)::text from movement"));
    assertEquals("1", ask("select count(*)::text from occupation where state = 'held'"));
  }

  private boolean noneWaits() {
    return ask("select count(*)::text from pg_locks where not granted").equals("0");
  }

  private void begin(BooleanSupplier isStopping) {
    CompletableFuture.runAsync(() -> run.run(scenario.ours(), plan, isStopping)).join();
  }

  private void change(String update) {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(update);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  private String ask(String query) {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(query)) {
      return found.next() ? found.getString(1) : null;
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }
}
