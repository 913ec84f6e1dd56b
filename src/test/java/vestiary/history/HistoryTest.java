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
import vestiary.scenario.Mending;
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
  void a_substitute_stands_in_the_history_of_its_mass_and_names_nobody() {
    Map<String, Object> clash = Mending.clash("2026-12-08", "dalmatic");
    Map<String, Object> step = Mending.remedy(clash, "step");

    Sending.post(
            Mending.address(clash, step.get("n")),
            Map.of("fingerprint", step.get("fingerprint"), "person", "Deacon Hollis"))
        .then()
        .statusCode(200);

    String mass = Asking.mass("sa", "2026-12-08T18:30").get("id").toString();
    Browsing.page("/history/masses/" + mass).says("Lawful substitute entered");
    Browsing.page("/history").says("What mends a clash entered").keepsSilentOn("Hollis");
  }

  @Test
  void whoever_asks_and_answers_for_a_journey_is_kept_and_no_mail_address_is() {
    Planning.applied("2026-12-07", "2026-12-13");
    Object journey = Asking.list("/api/movements?from=2026-12-07&to=2026-12-13").get(0).get("id");
    String address = "/api/movements/" + journey;
    ask(address, "greta@home.example");
    Sending.post(address + "/withdraw", Map.of()).then().statusCode(204);
    ask(address, "greta@elsewhere.example");

    LettingIn.program(letting.token(letting.user(Role.MINISTER)))
        .body(Map.of())
        .post(address + "/accept")
        .then()
        .statusCode(200);

    Browsing.page("/history")
        .says("Some Minister: Journey given to somebody changed", "asked", "accepted")
        .says("Mail address of a person changed", "another")
        .keepsSilentOn("home.example", "elsewhere.example");
    assertTrue(
        kept("person_mail").stream().noneMatch(row -> row.after.toString().contains("@")),
        kept("person_mail").toString());
  }

  private static void ask(String address, String mail) {
    Sending.post(address + "/ask", Map.of("carrier", "Greta Holm", "mail", mail))
        .then()
        .statusCode(200);
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
