package vestiary.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Browsing.press;
import static vestiary.scenario.Browsing.send;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.allocation.plan.Situation;
import vestiary.planning.CheckClashes;
import vestiary.planning.SpanToCheck;
import vestiary.scenario.Asking;
import vestiary.scenario.Page;
import vestiary.scenario.Planning;
import vestiary.scenario.Scenario;

/** The week is planned, then one thing changes. */
@QuarkusTest
class ReplanSmallTest {

  private static final String MONDAY = "2026-12-07";
  private static final String SUNDAY = "2026-12-13";
  private static final String JUBILEE = "2026-12-08T18:30";
  private static final String NO_LONGER_FITS = "The plan that holds no longer fits.";
  private static final String PRESS = "Plan anew what this touches";

  @Inject Scenario scenario;
  @Inject CheckClashes check;
  @Inject AskPlanner question;
  @Inject PlanBases bases;

  private Map<String, Object> last;

  @BeforeEach
  void a_week_with_a_plan_that_holds() {
    scenario.load();
    last = Planning.applied(MONDAY, SUNDAY);
  }

  @Test
  void while_nothing_changes_nothing_is_said_and_nothing_would_change() {
    page("/week/2026-12-07").keepsSilentOn(PRESS);

    Map<String, Object> plan = keeping();

    assertEquals("proven", plan.get("status"));
    assertEquals(true, plan.get("keep"));
    assertEquals(List.of(), plan.get("difference"));
    assertEquals(worn(last).toList(), worn(plan).toList());
    page("/plans/" + plan.get("id")).says("Nothing changes: it is the same as the plan that holds");
  }

  @Test
  void a_mass_that_moves_is_told_on_every_page_and_one_press_plans_what_it_touches() {
    String mass = Asking.mass("sa", JUBILEE).get("id").toString();
    Asking.change(Asking.mass("sa", JUBILEE), Map.of("start", "2026-12-08T19:00"));

    String moved = "Mass at Saint Anne on Tuesday 8 December, 18:30 has moved to 19:00.";
    for (String address :
        List.of("/week/2026-12-07", "/masses/" + mass, "/plans/" + last.get("id"))) {
      page(address).says(moved, NO_LONGER_FITS, PRESS);
    }
    page("/week/2026-12-14").keepsSilentOn(PRESS);
    Page sent = send("/plans", form());
    Map<String, Object> plan = Planning.finished(idOf(sent));
    page("/plans/" + plan.get("id")).says("What would change", "Saint Anne");

    press("/plans/%s/apply".formatted(plan.get("id"))).leadsTo("/plans/" + plan.get("id"));
    page("/week/2026-12-07").keepsSilentOn(PRESS);
  }

  @Test
  void other_days_keep_their_pieces() {
    Asking.change(Asking.mass("sa", JUBILEE), Map.of("concelebrants", 4));

    Map<String, Object> plan = keeping();

    List<String> sunday = massesOf(SUNDAY);
    assertFalse(sunday.isEmpty());
    assertEquals(
        worn(last).filter(one -> sunday.contains(one.split(" ")[0])).toList(),
        worn(plan).filter(one -> sunday.contains(one.split(" ")[0])).toList());
    assertTrue(
        sentences(plan).stream().anyMatch(one -> one.contains("for whom nothing is planned yet")),
        sentences(plan).toString());
  }

  @Test
  void a_piece_that_is_torn_is_replaced_and_said_so_by_name() {
    String torn = wornAtJubilee().filter(code -> code.startsWith("HT-W")).findFirst().orElseThrow();
    String set = torn.substring(0, torn.lastIndexOf('-'));
    post(
            "/api/pieces/%s/care".formatted(torn),
            Map.of("from", "2026-12-08", "to", "2026-12-20", "reason", "Torn"))
        .then()
        .statusCode(201);

    page("/week/2026-12-07").says(set + " cannot be had from Tuesday 8 December, 00:00 (Torn).");
    Map<String, Object> plan = keeping();

    List<String> before = massesOf("2026-12-07");
    assertFalse(
        worn(plan)
            .filter(one -> before.stream().noneMatch(one::startsWith))
            .anyMatch(one -> one.endsWith(" " + torn)));
    assertTrue(
        sentences(plan).stream()
            .anyMatch(one -> one.startsWith("Tuesday 8 December, Mass at 18:30")),
        sentences(plan).toString());
  }

  @Test
  void a_set_that_is_new_leaves_a_plan_that_fits_and_says_that_it_could_be_better() {
    post(
            "/api/pieces",
            Map.of(
                "code", "SA-W9-C", "kind", "chasuble", "colours", List.of("white"), "home", "sa"))
        .then()
        .statusCode(201);

    page("/week/2026-12-07")
        .says("SA-W9-C is new in the pool. The plan that holds still fits", PRESS)
        .keepsSilentOn(NO_LONGER_FITS);
  }

  @Test
  void without_a_plan_that_holds_keeping_plans_everything() {
    Map<String, Object> plan = keeping("2026-11-30", "2026-12-06");

    assertEquals("proven", plan.get("status"));
    assertFalse(Planning.list(plan, "difference").isEmpty());
  }

  @Test
  void what_a_plan_was_made_from_is_read_as_it_was_written() {
    scenario.within(
        scenario.ours(),
        () -> {
          SpanToCheck span = check.load(LocalDate.parse(MONDAY), LocalDate.parse(SUNDAY));
          Situation now = question.of(span);
          Basis basis = bases.find(UUID.fromString(last.get("id").toString())).orElseThrow();
          assertEquals(Basis.of(now).needs(), basis.needs());
          assertEquals(Basis.of(now).pieces(), basis.pieces());
          assertEquals(Basis.of(now).seconds(), basis.seconds());
          assertEquals(Basis.of(now), basis);
        });
  }

  @Test
  void what_an_older_program_wrote_leads_to_a_whole_plan() {
    scenario.within(scenario.ours(), () -> bases.update("facts = '{\"needs\":[{\"wearer\":1}]}'"));

    page("/week/2026-12-07").keepsSilentOn(PRESS);
    assertEquals("proven", keeping().get("status"));
  }

  @Test
  void a_press_for_the_whole_and_one_for_what_is_touched_are_two_plans() {
    String whole = Planning.ask(MONDAY, SUNDAY);
    assertNotEquals(whole, ask(MONDAY, SUNDAY));
    Planning.finished(whole);
    get("/api/plans/" + whole).then().statusCode(200);
  }

  private Stream<String> wornAtJubilee() {
    Object id = Asking.mass("sa", JUBILEE).get("id");
    return worn(last).filter(one -> one.startsWith(id + " ")).map(one -> one.split(" ")[2]);
  }

  private static List<String> massesOf(String date) {
    return Asking.list("/api/masses?from=%s&to=%s".formatted(date, date)).stream()
        .map(one -> one.get("id").toString())
        .toList();
  }

  private static Stream<String> worn(Map<String, Object> plan) {
    return Planning.list(plan, "assignments").stream()
        .map(
            one ->
                one.get("mass")
                    + " "
                    + one.get("role")
                    + one.get("number")
                    + " "
                    + one.get("piece"));
  }

  private static List<String> sentences(Map<String, Object> plan) {
    return Planning.list(plan, "difference").stream()
        .map(one -> one.get("sentence").toString())
        .toList();
  }

  private static Map<String, Object> keeping() {
    return keeping(MONDAY, SUNDAY);
  }

  private static Map<String, Object> keeping(String from, String to) {
    return Planning.finished(ask(from, to));
  }

  private static String ask(String from, String to) {
    return post("/api/plans", Map.of("from", from, "to", to, "keep", true))
        .then()
        .statusCode(202)
        .extract()
        .path("id");
  }

  private static Map<String, List<String>> form() {
    return Map.of("from", List.of(MONDAY), "to", List.of(SUNDAY), "keep", List.of("true"));
  }

  private static String idOf(Page sent) {
    String way = sent.wayOn();
    return way.substring(way.lastIndexOf('/') + 1);
  }
}
