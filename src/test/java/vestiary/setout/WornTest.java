package vestiary.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Browsing.press;
import static vestiary.scenario.Browsing.send;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.put;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.pool.ReadWear;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Planning;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** What was really worn, after Mass, and what follows from it. */
@QuarkusTest
class WornTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;
  @Inject OwnerDatabase database;
  @Inject ReadWear wear;

  private String mass;

  @BeforeEach
  void a_mass_yesterday_for_which_one_of_two_green_sets_lay_ready() throws SQLException {
    scenario.empty();
    put("/api/settings", Map.of("name", "Valley")).then().statusCode(200);
    Sending.church("ht");
    for (String set : List.of("HT-G1", "HT-G2")) {
      Sending.piece(piece(set + "-C", "chasuble", set));
      Sending.piece(piece(set + "-S", "stole", set));
    }
    mass = Sending.mass("ht", "2026-11-29T10:00").get("id").toString();
    planned("HT-G1-C");
    planned("HT-G1-S");
  }

  @Test
  void what_nobody_corrects_was_worn_as_planned() {
    assertEquals(
        List.of("HT-G1-C", "HT-G1-S"), said().stream().map(one -> one.get("piece")).toList());
    assertEquals(Map.of("HT-G1-C", 1, "HT-G1-S", 1), ofLate());
    page("/vestments/HT-G1-C").says("Last worn on Sunday 29 November 2026.");
    page("/vestments/HT-G2-C").keepsSilentOn("Last worn");
  }

  @Test
  void what_was_worn_instead_counts_and_what_lay_there_does_not() {
    said(List.of(
            Map.of("piece", "HT-G1-C", "worn", false),
            Map.of("piece", "HT-G2-C", "worn", true, "insteadOf", "HT-G1-C")))
        .then()
        .statusCode(200);

    assertEquals(Map.of("HT-G2-C", 1, "HT-G1-S", 1), ofLate());
    page("/vestments/HT-G2-C").says("Last worn on Sunday 29 November 2026.");
    page("/vestments/HT-G1-C").keepsSilentOn("Last worn");
    page("/history/vestments/HT-G2-C").says("instead of");
  }

  @Test
  void the_page_takes_it_keeps_it_and_puts_it_back() {
    String address = "/masses/%s/worn".formatted(mass);
    Map<String, List<String>> form =
        page(address)
            .says("chasuble HT-G1-C", "for Celebrant")
            .form(
                address,
                Map.of("instead-HT-G1-C", "HT-G2-C", "worn-HT-G1-S", "no", "besides", "HT-G2-S"));

    send(address, form).leadsTo(address + "?done=kept");

    assertEquals(Map.of("HT-G2-C", 1, "HT-G2-S", 1), ofLate());
    page(address + "?done=kept").says("Kept: this is what was worn.", "Undo: all as planned");
    assertEquals(List.of("HT-G2-C"), page(address).form(address).get("instead-HT-G1-C"));

    press(address + "/as-planned").leadsTo(address + "?done=as-planned");
    assertEquals(Map.of("HT-G1-C", 1, "HT-G1-S", 1), ofLate());
  }

  @Test
  void of_two_alike_the_next_plan_takes_the_one_that_was_worn_less() {
    Sending.mass("ht", "2027-06-16T08:00");

    assertEquals("HT-G2-C", chasuble());

    said(List.of(Map.of("piece", "HT-G1-C", "worn", false))).then().statusCode(200);
    said(List.of(
            Map.of("piece", "HT-G1-C", "worn", false),
            Map.of("piece", "HT-G1-S", "worn", false),
            Map.of("piece", "HT-G2-C"),
            Map.of("piece", "HT-G2-S")))
        .then()
        .statusCode(200);

    assertEquals("HT-G1-C", chasuble());
  }

  @Test
  void what_cannot_be_is_refused_and_changes_nothing() {
    String tomorrow = Sending.mass("ht", "2026-12-01T10:00").get("id").toString();

    refusing.refused(
        422, "against-rule", () -> put("/api/masses/%s/worn".formatted(tomorrow), Map.of()));
    refusing.unfit(() -> said(List.of(Map.of("piece", "none"))), "piece");
    refusing.unfit(
        () -> said(List.of(Map.of("piece", "HT-G2-S", "insteadOf", "HT-G1-C"))), "piece");
    refusing.unfit(
        () -> said(List.of(Map.of("piece", "HT-G2-S"), Map.of("piece", "HT-G2-S"))), "piece");
    refusing.unfit(() -> said(List.of(Map.of("worn", false))), "piece");
  }

  private Response said(List<Map<String, Object>> pieces) {
    return put(address(), Map.of("pieces", pieces));
  }

  private String chasuble() {
    return Planning.list(Planning.finished(Planning.ask("2027-06-16", "2027-06-16")), "assignments")
        .stream()
        .filter(one -> one.get("kind").equals("chasuble"))
        .map(one -> one.get("piece").toString())
        .findFirst()
        .orElseThrow();
  }

  private String address() {
    return "/api/masses/%s/worn".formatted(mass);
  }

  private List<Map<String, Object>> said() {
    return get(address()).then().statusCode(200).extract().jsonPath().getList("");
  }

  private Map<String, Integer> ofLate() {
    Map<String, Integer>[] found = new Map[1];
    scenario.within(scenario.ours(), () -> found[0] = wear.ofLate());
    return found[0];
  }

  private static Map<String, Object> piece(String code, String kind, String set) {
    return Map.of(
        "code", code, "kind", kind, "colours", List.of("green"), "set", set, "home", "ht");
  }

  private void planned(String code) throws SQLException {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(
          """
          INSERT INTO occupation (cluster_id, id, piece_id, state, starts, ends, church_id, mass_id,
                                  reason, standing, version, role, ordinal)
          SELECT p.cluster_id, gen_random_uuid(), p.id, 'planned', '2026-11-29 15:30Z',
                 '2026-11-29 17:15Z', p.home_id, '%s', '', true, 0, 'principal', 1
          FROM piece p WHERE p.code = '%s'
          """
              .formatted(mass, code));
    }
  }
}
