package vestiary.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Planning;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

/** Every change is kept, with its maker, from what to what, and nothing else is. */
@QuarkusTest
class HistoryTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;
  @Inject LettingIn letting;
  @Inject AuditRows rows;

  private String pastor;
  private UUID pastorId;

  @BeforeEach
  void a_cluster_with_a_pastor() {
    scenario.load();
    pastorId = letting.user(Role.PASTOR);
    pastor = letting.token(pastorId);
  }

  @Test
  void a_mass_that_is_moved_says_by_whom_and_from_when_to_when() {
    Map<String, Object> mass = Asking.mass("sa", "2026-12-08T18:30");
    String address = "/api/masses/" + mass.get("id");

    LettingIn.program(pastor)
        .body(Sending.with(Sending.with(mass, "start", "2026-12-08T19:00"), "note", "Later"))
        .put(address)
        .then()
        .statusCode(200);

    Browsing.page("/history/masses/" + mass.get("id"))
        .says("Some Pastor: Mass changed", "starts:", "2026-12-09T00:30", "2026-12-09T01:00")
        .says("note:", "Later")
        .keepsSilentOn("version");
    Browsing.page("/history/users/" + pastorId).says("Mass changed");
    Browsing.page("/history").says("Some Pastor: Mass changed");
  }

  @Test
  void a_piece_keeps_its_changes_and_its_care_in_one_list() {
    Sending.post("/api/pieces/HT-W1-C/care", Map.of("from", "2026-12-20", "reason", "Torn hem"))
        .then()
        .statusCode(201);

    Browsing.page("/history/vestments/HT-W1-C")
        .says("The token of the server: Piece held, out or in care entered", "Torn hem");
  }

  @Test
  void what_is_refused_leaves_no_trace() {
    long before = count();

    refusing.unfit(
        () -> Sending.post("/api/masses", Map.of("church", "nowhere", "start", "2026-12-08T18:30")),
        "church");

    assertEquals(before, count());
  }

  @Test
  void a_plan_that_is_applied_is_one_line_and_not_one_a_piece() {
    long before = count();

    Planning.applied("2026-12-07", "2026-12-13");

    assertEquals(before + 1, count());
  }

  @Test
  void no_name_of_a_person_and_no_password_is_kept() {
    letting.user("piers", Role.READER);

    List<AuditRow> found = kept("app_user");

    assertFalse(found.isEmpty());
    found.forEach(
        row ->
            assertTrue(
                row.after.keySet().stream()
                    .noneMatch(List.of("name", "login", "password")::contains),
                row.after.toString()));
  }

  @Test
  void a_reader_does_not_look_back() {
    String reader = letting.token(letting.user(Role.READER));

    LettingIn.program(reader).get("/history").then().statusCode(403);
  }

  private long count() {
    long[] counted = new long[1];
    scenario.within(scenario.ours(), () -> counted[0] = rows.count());
    return counted[0];
  }

  private List<AuditRow> kept(String kind) {
    List<List<AuditRow>> found = new java.util.ArrayList<>();
    scenario.within(scenario.ours(), () -> found.add(rows.list("kind", kind)));
    return found.get(0);
  }
}
