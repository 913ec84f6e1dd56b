package vestiary.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Mending;
import vestiary.scenario.OwnerDatabase;
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
  @Inject OwnerDatabase owner;

  /** All columns of tables with the trigger of V016, but for those that it leaves out. */
  private static final String KEPT =
      """
      select distinct c.table_name, c.column_name
      from information_schema.columns c
      join information_schema.triggers t on t.event_object_table = c.table_name
      where c.table_schema = 'public' and t.action_statement like '%keep_change()%'
        and not c.column_name = any (array['cluster_id', 'id', 'version', 'during', 'unfolded_until',
          'fingerprint', 'used_at', 'progress', 'result', 'replaced', 'created_at', 'deed', 'person',
          'carrier', 'rider', 'accepted_by', 'asked_by', 'changed_by', 'answered_by'])
        and not (c.table_name in ('app_user', 'person')
          and c.column_name in ('name', 'short_name', 'slug', 'login'))
      """;

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
        .isHeaded("Saint Anne, 8 December 2026, 19:00")
        .says("Some Pastor: Mass at Saint Anne, 8 December 2026, 19:00 changed")
        .says("start 8 December 2026, 18:30 8 December 2026, 19:00")
        .says("concelebrate Later")
        .keepsSilentOn("version", "starts", "T00:30");
    Browsing.page("/history/users/" + pastorId)
        .isHeaded("What Some Pastor changed")
        .says("Mass at Saint Anne, 8 December 2026, 19:00 changed");
    Browsing.page("/history/churches/sa").says("19:00 changed");
    Browsing.page("/history/churches/ht").keepsSilentOn("19:00 changed");
  }

  @Test
  void a_note_that_looks_like_an_hour_or_a_day_that_is_none_is_shown_as_it_was_typed() {
    Map<String, Object> mass = Asking.mass("sa", "2026-12-08T18:30");
    Asking.change(mass, Map.of("note", "2026-12-08T18:30"));
    Asking.change(mass, Map.of("note", "2026-02-31"));

    Browsing.page("/history/masses/" + mass.get("id")).says("2026-12-08T18:30", "2026-02-31");
  }

  @Test
  void a_piece_keeps_its_changes_and_its_care_in_one_list() {
    Sending.post("/api/pieces/HT-W1-C/care", Map.of("from", "2026-12-20", "reason", "Torn hem"))
        .then()
        .statusCode(201);

    Browsing.page("/history/vestments/HT-W1-C")
        .says(
            "The token of the server: Piece held, out or in care HT-W1-C entered", "why Torn hem");
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
    Browsing.page("/history/masses/" + mass)
        .says("Lawful substitute at Saint Anne, 8 December 2026, 18:30 entered");
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
        .says("Some Minister: Journey given to somebody: Greta Holm", "state asked accepted")
        .says("Mail address of Greta Holm changed", "another")
        .keepsSilentOn("home.example", "elsewhere.example");
    assertTrue(
        kept("person_mail").stream().noneMatch(row -> row.after.toString().contains("@")),
        kept("person_mail").toString());
  }

  @Test
  void a_person_s_history_is_that_of_the_masses_with_the_name() {
    Map<String, Object> mass = Asking.mass("sa", "2026-12-08T18:30");

    Sending.put("/api/masses/" + mass.get("id"), Sending.with(mass, "celebrant", "Ilverton"))
        .then()
        .statusCode(200);

    Browsing.page("/history/people/cosmas-ilverton")
        .says("celebrant Fintan Oakhallow Cosmas Ilverton")
        .says("Mass at Saint Anne, 8 December 2026, 18:30 changed");
    Browsing.page("/people/cosmas-ilverton").links("/history/people/cosmas-ilverton");
    Browsing.page("/masses/" + mass.get("id")).says("Who changed this?");
    Browsing.page("/vestments/HT-W1-C").says("Who changed this?");
  }

  @Test
  void the_list_is_narrowed_by_maker_and_day_and_turned_a_page_at_a_time() {
    for (int i = 0; i < 51; i++) {
      Sending.put(
              "/api/journeys", Map.of("from", "ht", "to", "sa", "minutes", 100 + i, "oneWay", true))
          .then()
          .statusCode(200);
    }

    Browsing.page("/history?who=server")
        .says("minutes on the way 149 150")
        .links("/history?page=2&who=server");
    Browsing.page("/history?page=2&who=server").says("Newer").keepsSilentOn("149 150", "Older");
    Browsing.page("/history?who=" + pastorId).says("Nothing was changed");
    Browsing.page("/history?to=2001-01-01").says("Nothing was changed");
    Browsing.open("/history?from=yesterday").is(400);
  }

  @Test
  void an_administrator_takes_it_out_as_a_table_and_for_programs() {
    Sending.put("/api/journeys", Map.of("from", "ht", "to", "sa", "minutes", 33, "oneWay", true))
        .then()
        .statusCode(200);

    Map<String, Object> newest = Asking.list("/api/history?who=server").get(0);
    String table =
        Sending.get("/api/history.csv?who=server").then().statusCode(200).extract().asString();

    assertEquals("Journey between two churches: Holy Trinity, Saint Anne", newest.get("thing"));
    assertEquals("changed", newest.get("deed"));
    assertEquals(
        "at,who,device,thing,deed,field,before,after", table.lines().findFirst().orElseThrow());
    assertTrue(
        table
            .lines()
            .skip(1)
            .findFirst()
            .orElseThrow()
            .endsWith(
                ",The token of the server,,\"Journey between two churches: Holy Trinity, Saint Anne\",changed,minutes on the way,%s,33"
                    .formatted(before(newest))),
        table);
    LettingIn.program(pastor).get("/api/history").then().statusCode(403);
  }

  private static Object before(Map<String, Object> change) {
    return ((Map<?, ?>) ((List<?>) change.get("fields")).get(0)).get("before");
  }

  @Test
  void every_column_whose_changes_are_kept_has_a_word_or_is_left_out_by_intention()
      throws SQLException {
    List<String> wordless = new ArrayList<>();
    try (Connection connection = owner.getConnection();
        Statement statement = connection.createStatement();
        ResultSet column = statement.executeQuery(KEPT)) {
      while (column.next()) {
        if (!FieldWords.knows(column.getString(1), column.getString(2))) {
          wordless.add(column.getString(1) + "." + column.getString(2));
        }
      }
    }

    assertEquals(List.of(), wordless);
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
