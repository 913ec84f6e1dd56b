package vestiary.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;
import static vestiary.scenario.Sending.put;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import vestiary.scenario.Asking;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

@QuarkusTest
class ClashResourceTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void two_churches_and_one_white_set() {
    scenario.empty();
    Sending.church("ht");
    Sending.church("sa");
    set("HT-W1");
  }

  @Test
  void an_empty_week_has_none() {
    assertEquals(List.of(), Asking.clashes("2026-12-07", "2026-12-13"));
  }

  @Test
  void one_mass_with_its_set_is_no_clash() {
    Sending.mass("ht", "2026-12-08T18:30");

    assertEquals(List.of(), Asking.clashes("2026-12-08", "2026-12-08"));
  }

  @Test
  void a_clash_says_everything_that_was_promised_of_it() {
    Sending.mass(Map.of("church", "ht", "start", "2026-12-08T18:30", "concelebrants", 2));

    Map<String, Object> clash =
        Asking.clashes("2026-12-08", "2026-12-08").stream()
            .filter(c -> c.get("pieceKind").equals("chasuble"))
            .findFirst()
            .orElseThrow();

    assertTrue(
        clash
            .keySet()
            .containsAll(
                Set.of(
                    "id",
                    "level",
                    "kind",
                    "severity",
                    "from",
                    "to",
                    "needed",
                    "available",
                    "masses",
                    "unservedMasses",
                    "pieces",
                    "elsewhere",
                    "sentence",
                    "remedies")),
        clash.toString());
    assertEquals(3, clash.get("needed"));
    assertEquals(1, clash.get("available"));
  }

  @Test
  void its_id_stays_as_long_as_it_stands() {
    Sending.mass(Map.of("church", "ht", "start", "2026-12-08T18:30", "concelebrants", 2));

    assertEquals(
        Asking.clashes("2026-12-08", "2026-12-08"), Asking.clashes("2026-12-07", "2026-12-09"));
  }

  @Test
  void it_is_shown_where_one_of_its_masses_starts_and_nowhere_else() {
    Sending.mass(Map.of("church", "ht", "start", "2026-12-08T18:30", "concelebrants", 1));

    assertTrue(Asking.clashes("2026-12-08", "2026-12-08").size() > 0);
    assertEquals(List.of(), Asking.clashes("2026-12-07", "2026-12-07"));
    assertEquals(List.of(), Asking.clashes("2026-12-09", "2026-12-09"));
  }

  @Test
  void it_goes_when_its_mass_is_cancelled() {
    Map<String, Object> mass =
        Sending.mass(Map.of("church", "ht", "start", "2026-12-08T18:30", "concelebrants", 1));

    delete("/api/masses/" + mass.get("id")).then().statusCode(204);

    assertEquals(List.of(), Asking.clashes("2026-12-08", "2026-12-08"));
  }

  @Test
  void it_goes_when_another_set_is_bought() {
    Sending.mass(Map.of("church", "ht", "start", "2026-12-08T18:30", "concelebrants", 1));
    assertEquals(false, Asking.clashes("2026-12-08", "2026-12-08").isEmpty());

    set("HT-W2");

    assertEquals(List.of(), Asking.clashes("2026-12-08", "2026-12-08"));
  }

  @Test
  void it_comes_when_the_set_goes_to_the_cleaner() {
    Sending.mass("ht", "2026-12-08T18:30");

    post("/api/pieces/HT-W1-C/care", Map.of("from", "2026-12-07", "reason", "Cleaner"))
        .then()
        .statusCode(201);

    Map<String, Object> clash = Asking.only(Asking.clashes("2026-12-08", "2026-12-08"));
    assertEquals(1, clash.get("needed"));
    assertEquals(0, clash.get("available"));
    assertEquals("must", clash.get("severity"));
  }

  @Test
  void one_set_serves_two_churches_if_there_is_time_to_drive_and_not_otherwise() {
    // Ends 9:00, cleared 9:15, 14 minutes on the road: 9:29; set-out 30 minutes before the second.
    put("/api/journeys", Map.of("from", "ht", "to", "sa", "minutes", 14)).then().statusCode(200);
    Sending.mass("ht", "2026-12-08T08:00");
    Map<String, Object> second = Sending.mass("sa", "2026-12-08T09:59");
    assertEquals(List.of(), overTheWholeCluster());

    Asking.change(second, Map.of("start", "2026-12-08T09:58"));

    Map<String, Object> clash = Asking.only(overTheWholeCluster());
    assertEquals("unreachable", clash.get("kind"));
    assertEquals(2, clash.get("needed"));
    assertEquals(1, clash.get("available"));
    assertTrue(clash.get("sentence").toString().contains("09:29"), clash.toString());
  }

  @Test
  void a_day_of_another_year_is_no_part_of_a_hundred_days() {
    assertEquals(List.of(), Asking.clashes("2026-12-01", "2027-03-11"));
  }

  @ParameterizedTest
  @CsvSource({
    "from=2026-12-01&to=2027-03-12, to",
    "from=2026-12-02&to=2026-12-01, to",
    "from=2026-12-02, to",
    "to=2026-12-02, from",
    "from=x&to=2026-12-02, from",
    "from=2026-12-02&to=%2B999999999-12-31, to"
  })
  void a_span_that_cannot_be_answered_is_refused_at_its_field(String query, String field) {
    refusing.unfit(
        () -> RestAssured.given().urlEncodingEnabled(false).get("/api/clashes?" + query), field);
  }

  @Test
  void a_span_at_the_edge_of_the_calendar_is_answered() {
    assertEquals(List.of(), Asking.clashes("1970-01-01", "1970-01-02"));
    assertEquals(List.of(), Asking.clashes("2300-12-30", "2300-12-31"));
    assertEquals(List.of(), Asking.clashes("0001-01-01", "0001-01-01"));
    assertEquals(List.of(), Asking.clashes("9999-12-31", "9999-12-31"));
  }

  @Test
  void without_any_dates_both_are_asked_for() {
    refusing.unfit(() -> get("/api/clashes"), "from", "to");
  }

  private static List<Map<String, Object>> overTheWholeCluster() {
    return Asking.clashes("2026-12-08", "2026-12-08").stream()
        .filter(c -> "cluster".equals(c.get("level")) && "chasuble".equals(c.get("pieceKind")))
        .toList();
  }

  private static void set(String code) {
    for (String kind : List.of("chasuble", "stole")) {
      Sending.piece(
          Map.of(
              "code",
              code + "-" + kind.substring(0, 1).toUpperCase(Locale.ROOT),
              "kind",
              kind,
              "colours",
              List.of("white"),
              "home",
              "ht",
              "set",
              code));
    }
  }
}
