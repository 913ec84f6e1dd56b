package vestiary.plan;

import static vestiary.scenario.Browsing.open;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Browsing.press;
import static vestiary.scenario.Browsing.send;
import static vestiary.scenario.Sending.post;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Page;
import vestiary.scenario.Planning;
import vestiary.scenario.Scenario;

/** The plan as the administrator has it before her, without a script. */
@QuarkusTest
class PlanPageTest {

  private static final String SHORT = "Three concelebrants need white; two white sets are there";

  @Inject Scenario scenario;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void one_press_leads_to_the_plan_and_another_applies_it() {
    page("/week/2026-12-07").says(SHORT, "Plan this week").keepsSilentOn("The plan that holds");

    String plan = planned();
    page(plan)
        .isHeaded("7 to 13 December 2026")
        .says(
            "Proven: nothing better exists.",
            "Nothing is planned for these days yet",
            "Why this one?");
    press(plan + "/apply").leadsTo(plan);

    page(plan).says("This plan holds.", "Undo: the plan before");
    page("/week/2026-12-07").keepsSilentOn(SHORT).links("/plans/of/2026-12-07");
    open("/plans/of/2026-12-09").leadsTo(plan);
  }

  @Test
  void an_undone_plan_leaves_the_week_as_it_was() {
    String plan = planned();
    press(plan + "/apply").leadsTo(plan);

    press(plan + "/undo").leadsTo(plan);

    page(plan).says("Apply this plan");
    page("/week/2026-12-07").says(SHORT);
    open("/plans/of/2026-12-07").is(404);
  }

  @Test
  void the_journeys_say_who_takes_what_where_and_when() {
    press(planned() + "/apply");

    page("/movements?week=2026-12-09")
        .isHeaded("7 to 13 December 2026")
        .says("Leave by", "Saint Anne", "18:00", "chasuble and stole");
    page("/movements?week=2027-03-01").says("Nothing is carried this week.");
  }

  @Test
  void a_set_is_followed_through_its_week() {
    String plan = planned();
    press(plan + "/apply");
    String set = carriedSet(plan);

    page("/vestments/sets/%s/week/2026-12-10".formatted(set))
        .says(set + ", 7 to 13 December 2026", "carried from", "at Saint Anne by 18:00")
        .links("/week/2026-12-07");
    open("/vestments/sets/none/week/2026-12-07").is(404);
    open("/vestments/sets/%s/week/soon".formatted(set)).is(400);
  }

  @Test
  void a_plan_that_no_longer_fits_says_why_and_stays_on_its_page() {
    String plan = planned();
    Asking.change(Asking.mass("sa", "2026-12-08T18:30"), Map.of("start", "2026-12-08T19:00"));

    page(plan).says("Since this was made, the schedule has changed for one Mass: plan again.");
    press(plan + "/apply")
        .is(409)
        .isHeaded("7 to 13 December 2026")
        .says("was moved or cancelled since this was planned");
  }

  @Test
  void what_is_otherwise_with_a_stole_is_said_of_the_stole() {
    // A festive violet stole of another set would do; its chasuble is with the mender.
    post(
            "/api/pieces/HT-V3-C/care",
            Map.of("from", "2026-12-01", "to", "2026-12-31", "reason", "Lining"))
        .then()
        .statusCode(201);

    page(planned())
        .says("Stole: ", "deacon’s stole")
        .keepsSilentOn("deacon stole")
        .keepsSilentOn("better plan. Eight others", "better plan. Nine others")
        .keepsSilentOn("better plan. Ten others", "better plan. Eleven others");
  }

  @Test
  void a_second_plan_says_what_it_would_change() {
    press(planned() + "/apply");

    page(planned()).says("it is the same as the plan that holds.");
    Asking.change(Asking.mass("sa", "2026-12-08T18:30"), Map.of("concelebrants", 4));

    page(planned()).says("Against the plan that holds,", "new.");
  }

  @Test
  void what_cannot_be_is_told_with_a_page() {
    send("/plans", Map.of("from", List.of("2026-12-13"), "to", List.of("2026-12-07"))).is(400);
    open("/plans/none").is(404);
    open("/movements?week=soon").is(400);
  }

  private static String planned() {
    Page sent = send("/plans", Map.of("from", List.of("2026-12-07"), "to", List.of("2026-12-13")));
    String plan = sent.wayOn();
    Planning.finished(plan.substring(plan.lastIndexOf('/') + 1));
    return plan.substring(plan.indexOf("/plans/"));
  }

  private static String carriedSet(String plan) {
    return Planning.list(
            Planning.finished(plan.substring(plan.lastIndexOf('/') + 1)), "assignments")
        .stream()
        .filter(one -> one.get("mass").equals(Asking.mass("sa", "2026-12-08T18:30").get("id")))
        .filter(one -> one.get("kind").equals("chasuble"))
        .map(one -> one.get("set").toString())
        .filter(set -> !set.startsWith("SA-"))
        .findFirst()
        .orElseThrow();
  }
}
