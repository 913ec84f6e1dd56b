package vestiary.exchange;

import static io.restassured.RestAssured.given;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import vestiary.access.Action;
import vestiary.access.Reach;
import vestiary.access.Role;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

@QuarkusTest
class ExportResourceTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @ParameterizedTest
  @EnumSource
  void a_list_that_was_taken_out_changes_no_row_when_it_is_brought_in(ImportWhat what) {
    invented();
    String list = takenOut(what);
    assertTrue(list.lines().count() > 1, what + " is empty");
    String before = scenario.rows();

    bringIn(what, list);

    assertEquals(before, scenario.rows());
  }

  @Test
  void an_empty_cluster_that_all_lists_are_brought_into_gives_the_same_lists() {
    invented();
    Map<ImportWhat, String> lists = new EnumMap<>(ImportWhat.class);
    for (ImportWhat what : ImportWhat.values()) {
      lists.put(what, takenOut(what));
    }
    scenario.empty();

    lists.forEach(ExportResourceTest::bringIn);

    lists.forEach((what, list) -> assertEquals(list, takenOut(what)));
  }

  @ParameterizedTest
  @EnumSource
  void a_list_has_the_columns_that_are_understood(ImportWhat what) {
    invented();

    assertEquals(
        String.join(",", what.columns().stream().map(Column::name).toList()),
        takenOut(what).lines().findFirst().orElseThrow());
  }

  @Test
  void a_list_that_was_taken_out_is_known_again_by_its_columns() {
    invented();

    for (ImportWhat what : ImportWhat.values()) {
      Browsing.page(Browsing.sendList(WhichList.UNSAID, takenOut(what).getBytes(UTF_8)).wayOn())
          .isHeaded("Import: " + ImportWords.name(what));
    }
  }

  @Test
  void a_cell_changed_in_a_spreadsheet_is_the_only_change() {
    scenario.empty();
    Sending.church("ht");
    bringIn(ImportWhat.PIECES, "code,kind,home,place\r\nA1,alb,ht,press\r\nA2,alb,ht,press\r\n");
    String before = takenOut(ImportWhat.PIECES);

    bringIn(ImportWhat.PIECES, before.replaceFirst("press", "drawer"));

    assertEquals(before.replaceFirst("press", "drawer"), takenOut(ImportWhat.PIECES));
  }

  @Test
  void what_a_spreadsheet_would_reckon_with_is_marked_and_comes_back_unmarked() {
    scenario.empty();
    Sending.church("ht");
    String evil = "=HYPERLINK(\"\"http://a\"\")";
    bringIn(ImportWhat.PIECES, "code,kind,home,place\r\nA1,alb,ht,\"%s\"\r\n".formatted(evil));

    String list = takenOut(ImportWhat.PIECES);

    assertTrue(list.contains("\"'" + evil), list);
    bringIn(ImportWhat.PIECES, list.replace("alb", "surplice"));
    assertEquals(
        "=HYPERLINK(\"http://a\")", Asking.list("/api/pieces").get(0).get("place").toString());
  }

  @Test
  void a_list_that_there_is_not_is_refused() {
    scenario.empty();

    refusing.refused(404, "not-there", () -> given().get("/api/exports/wishes.csv"));
  }

  @ParameterizedTest
  @EnumSource
  void whoever_may_take_lists_out_may_see_all_that_stands_in_them(Role role) {
    boolean takesOut = Action.TAKE_OUT.reach(role) != Reach.NOWHERE;

    for (Action seen :
        List.of(Action.KEEP_PEOPLE, Action.SEE_CHILDREN, Action.SEE_INTENTIONS, Action.LOOK)) {
      assertTrue(!takesOut || seen.reach(role) == Reach.EVERYWHERE, role + " and " + seen);
    }
  }

  @Test
  void the_page_leads_to_every_list() {
    invented();

    Browsing.page("/take-out").isHeaded("Take it with you");

    for (ImportWhat what : ImportWhat.values()) {
      Browsing.page("/take-out").links("/api/exports/%s.csv".formatted(what.id()));
    }
  }

  /** With what the lists of the scenario lack. */
  private void invented() {
    scenario.load();
    Sending.post(
            "/api/people/ambrose-tarnwick/absences",
            Map.of("from", "2026-12-28", "to", "2026-12-30", "reason", "Retreat"))
        .then()
        .statusCode(201);
    Sending.mass(
        Map.of(
            "church", "ht",
            "start", "2026-12-10T15:00",
            "celebrant", "ambrose-tarnwick",
            "concelebrants", 2,
            "named", List.of("cosmas-ilverton"),
            "intention", "For the dead of the parish",
            "note", "=1+1, \"quoted\""));
  }

  private static String takenOut(ImportWhat what) {
    return given()
        .get("/api/exports/%s.csv".formatted(what.id()))
        .then()
        .statusCode(200)
        .contentType("text/csv;charset=UTF-8")
        .extract()
        .asString();
  }

  private static void bringIn(ImportWhat what, String list) {
    given()
        .contentType("text/csv")
        .body(list.getBytes(UTF_8))
        .post("/api/imports?dryRun=false&what=" + what.id())
        .then()
        .statusCode(200)
        .body("done", equalTo(true));
  }
}
