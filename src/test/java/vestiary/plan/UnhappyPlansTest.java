package vestiary.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Browsing.page;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.CurrentCluster;
import vestiary.allocation.planner.Planner;
import vestiary.planning.CheckClashes;
import vestiary.scenario.Asking;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Planned;
import vestiary.scenario.Planning;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** What a plan makes of what cannot be, and what becomes of it when its machine gives out. */
@QuarkusTest
class UnhappyPlansTest {

  private static final String SUNDAY = "2026-12-06";
  private static final String JUBILEE = "2026-12-08";

  @Inject Scenario scenario;
  @Inject Refusing refusing;
  @Inject OwnerDatabase database;
  @Inject PlanRows plans;
  @Inject PlanBases bases;
  @Inject AskPlanner question;
  @Inject CheckClashes check;
  @Inject CurrentCluster current;
  @Inject PlanWatch watch;
  @Inject Planner planner;

  private final UUID plan = UUID.fromString("01900000-0000-7000-8000-000000000002");

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  /** From the upper valley it is at Holy Trinity at 10:11, and set-out there is at 10:00. */
  @Test
  void two_holds_that_no_journey_joins_are_told_and_all_else_is_planned() {
    hold("HT-V4-C", "pp", SUNDAY + "T08:30", "2026-12-06 14:00Z", "2026-12-06 15:45Z");
    hold("HT-V4-C", "ht", SUNDAY + "T10:30", "2026-12-06 16:00Z", "2026-12-06 17:45Z");

    Map<String, Object> found = Planned.on(SUNDAY).body();

    assertEquals("proven", found.get("status"), found.toString());
    assertEquals(
        List.of(
            "HT-V4-C is to be at Holy Trinity by Sunday 6 December, 10:00, and cannot leave"
                + " Saints Peter and Paul before Sunday 6 December, 09:45."),
        found.get("contradictions"));
    Map<String, Object> elsewhere = Asking.mass("sj", SUNDAY + "T08:00");
    assertEquals(1, new Planned(found).worn(elsewhere, "chasuble").size());
    page("/plans/" + found.get("id")).says("Held in two places", "HT-V4-C is to be at");
  }

  /** By Our Lady of the Rosary it is 12 and 22 minutes. */
  @Test
  void where_the_straight_way_is_longer_than_a_way_round_the_way_round_is_taken() {
    Sending.put("/api/journeys", Map.of("from", "ht", "to", "sa", "minutes", 240, "oneWay", true))
        .then()
        .statusCode(200);

    Planned found = Planned.on(JUBILEE).isWhole(1, 34);

    assertEquals(JUBILEE + "T17:26:00-06:00", Asking.only(found.movements()).get("leaveBy"));
  }

  @Test
  void a_mass_that_moves_while_the_plan_is_worked_out_makes_it_unfit_and_no_hold_is_lost() {
    hold("SA-W1-C", "sa", JUBILEE + "T18:30", "2026-12-09 00:00Z", "2026-12-09 02:15Z");
    enterPlan();
    boolean[] moved = {false};

    runner(planner)
        .run(
            scenario.ours(),
            plan,
            () -> {
              if (!moved[0]) {
                moved[0] = true;
                Asking.change(
                    Asking.mass("sa", JUBILEE + "T18:30"), Map.of("start", JUBILEE + "T12:00"));
              }
              return false;
            });

    assertTrue(moved[0]);
    String detail =
        refusing
            .refused(
                409, "taken", () -> Sending.post("/api/plans/%s/apply".formatted(plan), Map.of()))
            .extract()
            .path("detail");
    assertEquals(
        "The Mass of Tuesday 8 December, 18:30 at Saint Anne was moved or cancelled since this was"
            + " planned. Nothing was changed; plan again.",
        detail);
  }

  @Test
  void a_plan_that_takes_more_memory_than_there_is_says_so_and_what_to_do() {
    enterPlan();
    Planner overtaxed =
        new Planner(
            (program, tiers, hint, work) -> {
              throw new OutOfMemoryError("invented");
            });

    runner(overtaxed).run(scenario.ours(), plan, () -> false);

    Map<String, Object> found = Planning.finished(plan.toString());
    assertEquals("failed", found.get("status"));
    assertEquals(
        "It takes more memory than the server has. Plan fewer days at once, or give the server"
            + " more.",
        found.get("failure"));
    page("/plans/" + plan).says("There is no plan. It takes more memory", "Plan again");
  }

  private RunPlan runner(Planner with) {
    return new RunPlan(plans, bases, question, check, current, watch, with);
  }

  private void enterPlan() {
    change(
        """
        insert into plan (cluster_id, id, first_date, last_date, status, failure, cancelled, starts,
                          requested_at, version)
        values ('%s', '%s', '%s', '%s', 'queued', '', false, 0, now(), 0)
        """
            .formatted(scenario.ours(), plan, JUBILEE, JUBILEE));
  }

  private void hold(String piece, String church, String start, String from, String until) {
    Object mass = Asking.mass(church, start).get("id");
    change(
        """
        insert into occupation (cluster_id, id, piece_id, state, starts, ends, church_id, mass_id,
                                reason, standing, version, depth)
        select p.cluster_id, gen_random_uuid(), p.id, 'held', '%s', '%s', c.id, '%s', '',
               true, 0, 0
        from piece p, church c where p.code = '%s' and c.slug = '%s'
        """
            .formatted(from, until, mass, piece, church));
  }

  private void change(String update) {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(update);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }
}
