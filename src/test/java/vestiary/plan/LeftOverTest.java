package vestiary.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Sending.post;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Planned;
import vestiary.scenario.Planning;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;

/**
 * What one week leaves at another church, the next one finds there, until somebody takes it home.
 */
@QuarkusTest
class LeftOverTest {

  private static final String JUBILEE = "2026-12-08";

  @Inject Scenario scenario;
  @Inject Refusing refusing;
  @Inject OwnerDatabase database;
  @Inject Clock clock;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void a_plan_says_what_is_still_to_be_taken_home_and_so_does_the_list_of_its_last_day() {
    Map<String, Object> plan = Planning.applied("2026-12-08", "2026-12-08");

    List<Map<String, Object>> left = Planning.list(plan, "toTakeHome");
    assertFalse(left.isEmpty(), plan.toString());
    left.forEach(
        one -> {
          assertEquals("sa", one.get("at"));
          assertEquals("ht", one.get("home"));
        });
    assertEquals(
        left.stream().map(one -> one.get("pieces")).toList(),
        leftAfter(JUBILEE).stream().map(one -> one.get("pieces")).toList());
    page("/movements?week=" + JUBILEE).says("Still to be taken home", "by whom you like");
  }

  @Test
  void what_was_left_is_there_and_is_not_carried_again() {
    Map<String, Object> jubilee = Asking.mass("sa", JUBILEE + "T18:30");
    Asking.change(jubilee, Map.of("deacons", 0));
    Planned.on(JUBILEE).isWhole(1, 14);

    leave("HT-W1", yesterday());

    assertEquals(List.of(), Asking.clashes(JUBILEE, JUBILEE));
    Planned plan = Planned.on(JUBILEE).isWhole(0, 0);
    assertTrue(plan.worn(jubilee, "chasuble").contains("HT-W1-C"), plan.toString());
  }

  @Test
  void what_is_home_again_is_carried_from_there() {
    Asking.change(Asking.mass("sa", JUBILEE + "T18:30"), Map.of("deacons", 0));
    leave("HT-W1", yesterday());
    String today = LocalDate.now(clock.withZone(Scenario.ZONE)).toString();
    Map<String, Object> left = Asking.only(leftAfter(today));
    assertEquals(List.of("HT-W1-C", "HT-W1-S"), left.get("pieces"));

    post("/api/movements/home", Map.of("pieces", left.get("pieces"))).then().statusCode(204);
    post("/api/movements/home", Map.of("pieces", left.get("pieces"))).then().statusCode(204);

    assertEquals(List.of(), leftAfter(today));
    assertEquals(1, Asking.list("/api/movements?from=%s&to=%s".formatted(today, today)).size());
    Planned.on(JUBILEE).isWhole(1, 14);
  }

  @Test
  void what_was_never_there_cannot_be_taken_home() {
    refusing.unfit(() -> post("/api/movements/home", Map.of("pieces", List.of())), "pieces");
    refusing.notThere(() -> post("/api/movements/home", Map.of("pieces", List.of("none"))));
  }

  @Test
  void planning_a_week_again_leaves_the_journeys_of_the_week_after_as_they_are() {
    Planning.applied("2026-12-07", "2026-12-08");
    Planning.applied("2026-12-09", "2026-12-13");
    List<Map<String, Object>> after = journeys("2026-12-09", "2026-12-13");

    Planning.applied("2026-12-07", "2026-12-08");

    assertEquals(after, journeys("2026-12-09", "2026-12-13"));
    List<Map<String, Object>> all = journeys("2026-12-07", "2026-12-13");
    assertEquals(new HashSet<>(all).size(), all.size(), all.toString());
  }

  private static List<Map<String, Object>> leftAfter(String date) {
    return Asking.list("/api/movements/home?on=" + date);
  }

  private static List<Map<String, Object>> journeys(String from, String to) {
    return Asking.list("/api/movements?from=%s&to=%s".formatted(from, to));
  }

  private String yesterday() {
    return LocalDate.now(clock.withZone(Scenario.ZONE)).minusDays(1).toString();
  }

  /** As a sacristan would who had held both pieces of a set for a Mass at Saint Anne. */
  private void leave(String set, String date) {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(
          """
          insert into occupation (cluster_id, id, piece_id, state, starts, ends, church_id, reason,
                                  standing, version, depth)
          select p.cluster_id, gen_random_uuid(), p.id, 'held', '%s 18:00Z', '%s 20:00Z', c.id, '',
                 true, 0, 0
          from piece p, church c where p.code like '%s-_' and c.slug = 'sa'
          """
              .formatted(date, date, set));
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }
}
