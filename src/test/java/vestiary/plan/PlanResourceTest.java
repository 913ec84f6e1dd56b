package vestiary.plan;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Planning;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;

/** The plan of the week in which Saint Anne has three concelebrants and two white sets. */
@QuarkusTest
class PlanResourceTest {

  private static final String MONDAY = "2026-12-07";
  private static final String SUNDAY = "2026-12-13";

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void a_press_is_accepted_and_says_where_the_plan_will_be() {
    String where =
        post("/api/plans", Map.of("from", MONDAY, "to", SUNDAY))
            .then()
            .statusCode(202)
            .extract()
            .header("Location");

    Map<String, Object> plan = Planning.finished(where.substring(where.lastIndexOf('/') + 1));
    assertEquals("proven", plan.get("status"));
    assertEquals(plan.get("bounds"), plan.get("score"));
    assertEquals(false, plan.get("applied"));
  }

  @Test
  void every_piece_is_named_for_a_mass_with_the_norm_that_asks_for_it() {
    Map<String, Object> plan = Planning.finished(Planning.ask(MONDAY, SUNDAY));

    List<Map<String, Object>> jubilee = ofJubilee(Planning.list(plan, "assignments"));
    assertEquals(
        3,
        jubilee.stream().filter(one -> one.get("kind").equals("chasuble")).count(),
        plan.toString());
    Set<Object> pieces = new HashSet<>(jubilee.stream().map(one -> one.get("piece")).toList());
    assertEquals(jubilee.size(), pieces.size(), "a piece is worn twice at one Mass");
    jubilee.forEach(
        one -> assertTrue(one.get("source").toString().contains("GIRM"), one.toString()));
    jubilee.forEach(one -> assertFalse(((List<?>) one.get("why")).isEmpty(), one.toString()));
  }

  @Test
  void an_applied_plan_mends_the_shortage_and_lists_the_journey() {
    assertEquals(2, shortagesOfJubilee().size());

    Map<String, Object> plan = Planning.applied(MONDAY, SUNDAY);

    assertEquals(true, plan.get("applied"));
    assertEquals(List.of(), shortagesOfJubilee());
    List<Map<String, Object>> journeys = journeysTo("sa");
    assertFalse(journeys.isEmpty());
    assertTrue(
        journeys.stream().anyMatch(one -> one.get("pieces").toString().contains("-W")),
        journeys.toString());
  }

  @Test
  void applying_twice_is_harmless_and_undoing_brings_the_shortage_back() {
    String id = Planning.applied(MONDAY, SUNDAY).get("id").toString();

    post("/api/plans/%s/apply".formatted(id), Map.of()).then().statusCode(200);
    delete("/api/plans/%s/apply".formatted(id))
        .then()
        .statusCode(200)
        .body("applied", equalTo(false));

    assertEquals(2, shortagesOfJubilee().size());
    assertEquals(List.of(), journeysTo("sa"));
  }

  @Test
  void what_changed_since_makes_the_shortage_stand_again() {
    Planning.applied(MONDAY, SUNDAY);
    Map<String, Object> jubilee = Asking.mass("sa", "2026-12-08T18:30");

    Asking.change(jubilee, Map.of("start", "2026-12-08T17:00"));

    assertEquals(2, shortagesOfJubilee().size());
  }

  @Test
  void planned_pieces_that_go_to_the_cleaner_make_the_shortage_stand_again() {
    Map<String, Object> plan = Planning.applied(MONDAY, SUNDAY);

    ofJubilee(Planning.list(plan, "assignments")).stream()
        .filter(one -> one.get("kind").equals("chasuble"))
        .map(one -> one.get("piece").toString())
        .filter(piece -> !piece.startsWith("SA-"))
        .forEach(piece -> care(piece, "Wax"));

    Map<String, Object> clash =
        Asking.only(
            shortagesOfJubilee().stream()
                .filter(one -> one.get("pieceKind").equals("chasuble"))
                .toList());
    assertEquals(3, clash.get("needed"));
    assertEquals(2, clash.get("available"));
  }

  @Test
  void two_who_press_at_once_get_one_plan() {
    List<String> ids =
        Stream.generate(() -> CompletableFuture.supplyAsync(() -> Planning.ask(MONDAY, SUNDAY)))
            .limit(2)
            .toList()
            .stream()
            .map(CompletableFuture::join)
            .toList();

    Planning.finished(ids.get(0));
    assertEquals(ids.get(0), ids.get(1));
  }

  @Test
  void a_plan_that_is_over_can_be_asked_for_again_and_is_the_same() {
    Map<String, Object> first = Planning.applied(MONDAY, SUNDAY);

    Map<String, Object> again = Planning.finished(Planning.ask(MONDAY, SUNDAY));

    assertNotEquals(first.get("id"), again.get("id"));
    assertEquals(first.get("score"), again.get("score"));
    assertEquals(
        Planning.list(first, "assignments").stream().map(one -> one.get("piece")).toList(),
        Planning.list(again, "assignments").stream().map(one -> one.get("piece")).toList());
  }

  @Test
  void a_hold_made_meanwhile_is_told_and_nothing_is_changed() {
    String id = Planning.ask(MONDAY, SUNDAY);
    Map<String, Object> plan = Planning.finished(id);
    String worn = ofJubilee(Planning.list(plan, "assignments")).get(0).get("piece").toString();
    care(worn, "Torn");

    String detail =
        refusing
            .refused(409, "taken", () -> post("/api/plans/%s/apply".formatted(id), Map.of()))
            .extract()
            .path("detail");

    assertTrue(detail.startsWith(worn + " is in care (Torn) from Tuesday 8 December"), detail);
  }

  @Test
  void a_mass_moved_meanwhile_is_told_and_nothing_is_changed() {
    String id = Planning.ask(MONDAY, SUNDAY);
    Planning.finished(id);
    Asking.change(Asking.mass("sa", "2026-12-08T18:30"), Map.of("start", "2026-12-08T19:00"));

    String detail =
        refusing
            .refused(409, "taken", () -> post("/api/plans/%s/apply".formatted(id), Map.of()))
            .extract()
            .path("detail");

    assertTrue(detail.contains("Tuesday 8 December, 18:30 at Saint Anne"), detail);
  }

  @Test
  void cancelling_what_is_over_changes_nothing() {
    String id = Planning.ask(MONDAY, SUNDAY);
    Planning.finished(id);

    delete("/api/plans/" + id).then().statusCode(204);

    get("/api/plans/" + id).then().body("status", equalTo("proven"));
  }

  @Test
  void spans_that_are_none_are_refused() {
    refusing.unfit(() -> post("/api/plans", Map.of()), "from", "to");
    refusing.unfit(() -> post("/api/plans", Map.of("from", SUNDAY, "to", MONDAY)), "to");
    refusing.unfit(() -> post("/api/plans", Map.of("from", "soon", "to", MONDAY)), "from");
    refusing.unfit(() -> post("/api/plans", Map.of("from", MONDAY, "to", "2027-01-07")), "to");
    refusing.unfit(
        () -> post("/api/plans", Map.of("from", "1960-01-01", "to", "1960-01-02")), "from");
    refusing.unfit(() -> get("/api/movements"), "from", "to");
  }

  @Test
  void a_month_is_the_longest_span() {
    assertEquals(
        "proven", Planning.finished(Planning.ask("2027-07-01", "2027-07-31")).get("status"));
  }

  @Test
  void a_plan_that_is_not_there_is_told() {
    String nobody = "/api/plans/00000000-0000-7000-8000-000000000000";
    refusing.notThere(() -> get(nobody));
    refusing.notThere(() -> get("/api/plans/none"));
    refusing.notThere(() -> delete(nobody));
    refusing.notThere(() -> post(nobody + "/apply", Map.of()));
    refusing.notThere(() -> delete(nobody + "/apply"));
  }

  @Test
  void another_clusters_plan_is_not_there() {
    String id = Planning.applied(MONDAY, SUNDAY).get("id").toString();

    scenario.becomeAnother();

    refusing.notThere(() -> get("/api/plans/" + id));
    refusing.notThere(() -> post("/api/plans/%s/apply".formatted(id), Map.of()));
    assertEquals(List.of(), journeysTo("sa"));
  }

  private static void care(String piece, String reason) {
    post(
            "/api/pieces/%s/care".formatted(piece),
            Map.of("from", "2026-12-08", "to", "2026-12-08", "reason", reason))
        .then()
        .statusCode(201);
  }

  private static List<Map<String, Object>> ofJubilee(List<Map<String, Object>> assignments) {
    Object id = Asking.mass("sa", "2026-12-08T18:30").get("id");
    return assignments.stream().filter(one -> one.get("mass").equals(id)).toList();
  }

  private static List<Map<String, Object>> shortagesOfJubilee() {
    return Asking.clashes("2026-12-08", "2026-12-08");
  }

  private static List<Map<String, Object>> journeysTo(String church) {
    return Asking.list("/api/movements?from=%s&to=%s".formatted(MONDAY, SUNDAY)).stream()
        .filter(one -> one.get("to").equals(church))
        .toList();
  }
}
