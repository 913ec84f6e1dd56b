package vestiary.schedule;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;
import static vestiary.scenario.Sending.put;
import static vestiary.scenario.Sending.with;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import jakarta.inject.Inject;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.scenario.Asking;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

@QuarkusTest
class MassResourceTest {

  private static final Map<String, Object> MINIMAL =
      Map.of("church", "ht", "start", "2026-12-08T18:30");

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void one_church() {
    scenario.empty();
    Sending.church("ht");
  }

  @Test
  void a_church_and_a_start_are_enough() {
    // The Immaculate Conception, a solemnity of obligation: white (GIRM 346 a).
    post("/api/masses", MINIMAL)
        .then()
        .statusCode(201)
        .header("Location", containsString("/api/masses/"))
        .body("church", equalTo("ht"))
        .body("start", equalTo("2026-12-08T18:30:00-06:00"))
        .body("minutes", equalTo(60))
        .body("mass", equalTo("of-the-day"))
        .body("celebration", equalTo("immaculate-conception"))
        .body("colour", equalTo("white"))
        .body("colours", equalTo(List.of("white")))
        .body("concelebrants", equalTo(0))
        .body("deacons", equalTo(0))
        .body("brings", equalTo(List.of()))
        .body("chosen", equalTo(List.of()))
        .body("celebrant", nullValue())
        .body("setOutMinutes", nullValue());
  }

  @Test
  void a_weekday_mass_is_half_an_hour_unless_it_is_said() {
    post("/api/masses", with(MINIMAL, "start", "2026-12-10T08:00"))
        .then()
        .body("minutes", equalTo(30));
  }

  @Test
  void everything_that_is_given_is_kept() {
    Map<String, Object> whole =
        Map.ofEntries(
            Map.entry("church", "ht"),
            Map.entry("start", "2026-12-10T18:30:00-06:00"),
            Map.entry("minutes", 45),
            Map.entry("mass", "votive"),
            Map.entry("votiveOf", "the Sacred Heart"),
            Map.entry("leave", "rector"),
            Map.entry("colour", "white"),
            Map.entry("celebrant", "anselm-brightwater"),
            Map.entry("concelebrants", 2),
            Map.entry("deacons", 1),
            Map.entry(
                "brings",
                List.of(
                    Map.of("role", "concelebrant", "count", 2, "kinds", List.of("alb", "stole")))),
            Map.entry("setOutMinutes", 40),
            Map.entry("note", "First Thursday"),
            Map.entry("intention", "For the harvest"));

    Map<String, Object> made = Sending.mass(whole);

    Map<String, Object> kept = get("/api/masses/" + made.get("id")).jsonPath().getMap("");
    whole.forEach((field, value) -> assertEquals(value, kept.get(field), field));
    assertEquals(List.of("mass", "colour"), kept.get("chosen"));
  }

  @Test
  void a_chosen_celebration_brings_its_colour() {
    // Saint John Damascene, an optional memorial on 4 December: violet weekday or white memorial.
    Map<String, Object> weekday = Sending.mass("ht", "2026-12-04T09:00");
    Map<String, Object> memorial =
        Sending.mass(
            Map.of("church", "ht", "start", "2026-12-04T12:10", "celebration", "john-damascene"));

    assertEquals("violet", weekday.get("colour"));
    assertEquals("white", memorial.get("colour"));
    assertEquals(List.of("celebration"), memorial.get("chosen"));
  }

  @Test
  void it_moves_with_a_change() {
    Map<String, Object> mass = Sending.mass("ht", "2026-12-08T18:30");

    put("/api/masses/" + mass.get("id"), with(mass, "start", "2026-12-09T07:00"))
        .then()
        .statusCode(200)
        .body("id", equalTo(mass.get("id")))
        .body("start", equalTo("2026-12-09T07:00:00-06:00"))
        .body("celebration", equalTo("wednesday-week-2-advent"));

    assertEquals(List.of(), Asking.masses("ht", "2026-12-08"));
    assertEquals(1, Asking.masses("ht", "2026-12-09").size());
  }

  @Test
  void what_is_chosen_with_a_change_stays_chosen() {
    Map<String, Object> mass = Sending.mass("ht", "2026-12-04T09:00");

    put("/api/masses/" + mass.get("id"), with(mass, "colour", "white")).then().statusCode(200);
    put(
            "/api/masses/" + mass.get("id"),
            Map.of("church", "ht", "start", "2026-12-05T17:00", "mass", "of-the-day"))
        .then()
        .statusCode(200)
        .body("chosen", equalTo(List.of("mass")));
  }

  @Test
  void an_answer_sent_back_chooses_nothing_more_than_before() {
    Map<String, Object> mass =
        Sending.mass(
            Map.of("church", "ht", "start", "2026-12-04T09:00", "celebration", "john-damascene"));

    put("/api/masses/" + mass.get("id"), mass).then().statusCode(200);

    assertEquals(mass, get("/api/masses/" + mass.get("id")).jsonPath().getMap(""));
  }

  @Test
  void a_change_is_whole_and_forgets_what_it_does_not_say() {
    Map<String, Object> mass = Sending.mass(with(MINIMAL, "note", "Choir"));

    put("/api/masses/" + mass.get("id"), MINIMAL).then().statusCode(200).body("note", nullValue());
  }

  @Test
  void a_cancelled_mass_is_gone_from_lists_and_known_by_its_id() {
    Map<String, Object> mass = Sending.mass("ht", "2026-12-08T18:30");
    String address = "/api/masses/" + mass.get("id");

    delete(address).then().statusCode(204);

    assertEquals(List.of(), Asking.masses("ht", "2026-12-08"));
    get(address).then().statusCode(200).body("cancelled", equalTo(true));
    refusing.notThere(() -> delete(address));
    refusing.notThere(() -> put(address, MINIMAL));
  }

  @Test
  void a_list_has_both_its_days_one_church_and_the_order_of_starts() {
    Sending.church("sa");
    Sending.mass("sa", "2026-12-09T23:59");
    Sending.mass("ht", "2026-12-08T00:00");
    Sending.mass("ht", "2026-12-07T23:59");
    Sending.mass("ht", "2026-12-10T00:00");

    assertEquals(
        List.of("2026-12-08T00:00:00-06:00", "2026-12-09T23:59:00-06:00"),
        Asking.list("/api/masses?from=2026-12-08&to=2026-12-09").stream()
            .map(m -> m.get("start"))
            .toList());
    assertEquals(
        List.of("sa"),
        Asking.list("/api/masses?from=2026-12-08&to=2026-12-09&church=sa").stream()
            .map(m -> m.get("church"))
            .toList());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "from=2026-12-09&to=2026-12-08",
        "from=2026-12-08&to=2028-12-08",
        "from=2026-12-08&to=soon",
        "from=2026-12-08&to=",
        "from=2026-12-08&to=%2B999999999-12-31"
      })
  void a_span_that_cannot_be_answered_is_refused(String query) {
    refusing.unfit(
        () -> RestAssured.given().urlEncodingEnabled(false).get("/api/masses?" + query), "to");
  }

  @Test
  void a_span_beyond_what_the_calendar_knows_holds_no_mass() {
    assertEquals(List.of(), Asking.list("/api/masses?from=1492-08-03&to=1492-10-12"));
    assertEquals(List.of(), Asking.list("/api/masses?from=2300-12-31&to=2301-01-31"));
  }

  @Test
  void a_church_that_is_not_there_has_no_list() {
    refusing.notThere(() -> get("/api/masses?from=2026-12-08&to=2026-12-08&church=nowhere"));
  }

  @Test
  void an_unknown_or_malformed_id_is_not_there() {
    for (String id : List.of("0190a0b0-0000-7000-8000-000000000000", "x", "1-1-1-1-1", "null")) {
      refusing.notThere(() -> get("/api/masses/" + id));
      refusing.notThere(() -> put("/api/masses/" + id, MINIMAL));
      refusing.notThere(() -> delete("/api/masses/" + id));
    }
  }

  @Test
  void missing_fields_are_all_told_at_once() {
    refusing.unfit(() -> post("/api/masses", Map.of()), "church", "start");
  }

  @Test
  void everything_that_is_wrong_is_told_at_once() {
    refusing.unfit(
        () ->
            post(
                "/api/masses",
                Map.ofEntries(
                    Map.entry("church", "nowhere"),
                    Map.entry("start", "tomorrow"),
                    Map.entry("minutes", 0),
                    Map.entry("mass", "high"),
                    Map.entry("leave", "pope"),
                    Map.entry("colour", "blue"),
                    Map.entry("concelebrants", -1),
                    Map.entry("deacons", 201),
                    Map.entry("setOutMinutes", 241),
                    Map.entry("note", "n".repeat(2001)),
                    Map.entry("intention", "a\0b"),
                    Map.entry(
                        "brings",
                        List.of(Map.of("role", "x", "count", 0, "kinds", List.of("hat")))))),
        "church",
        "start",
        "minutes",
        "mass",
        "leave",
        "colour",
        "concelebrants",
        "deacons",
        "setOutMinutes",
        "note",
        "intention",
        "brings.role",
        "brings.count",
        "brings.kinds");
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 4, 361, 1800, -60, Integer.MIN_VALUE})
  void it_lasts_five_to_three_hundred_and_sixty_minutes(int minutes) {
    refusing.unfit(() -> post("/api/masses", with(MINIMAL, "minutes", minutes)), "minutes");
  }

  @ParameterizedTest
  @ValueSource(ints = {5, 360})
  void the_shortest_and_the_longest_are_taken(int minutes) {
    assertEquals(minutes, Sending.mass(with(MINIMAL, "minutes", minutes)).get("minutes"));
  }

  @Test
  void a_colour_that_does_not_exist_is_refused() {
    refusing.unfit(() -> post("/api/masses", with(MINIMAL, "colour", "blue")), "colour");
  }

  @Test
  void a_celebration_that_this_mass_cannot_keep_is_refused() {
    refusing.unfit(
        () -> post("/api/masses", with(MINIMAL, "celebration", "john-damascene")), "celebration");
    refusing.unfit(
        () -> post("/api/masses", with(MINIMAL, "celebration", "no-such-thing")), "celebration");
  }

  @ParameterizedTest
  @CsvSource({"minutes, many", "concelebrants, true", "brings, none", "church, '{}'"})
  void a_field_of_the_wrong_kind_is_refused_by_name(String field, String value) {
    String body =
        "{\"church\": \"ht\", \"start\": \"2026-12-08T18:30\", \"%s\": %s}"
            .formatted(field, value.startsWith("{") ? value : "\"" + value + "\"");

    refusing.unfit(() -> post("/api/masses", body), field);
  }

  @Test
  void a_kind_of_piece_that_is_empty_is_refused() {
    for (Object kind : Arrays.asList("", " ", null)) {
      Map<String, Object> brings = new HashMap<>(Map.of("role", "principal", "count", 1));
      brings.put("kinds", Collections.singletonList(kind));

      refusing.unfit(
          () -> post("/api/masses", with(MINIMAL, "brings", List.of(brings))), "brings.kinds");
    }
  }

  @Test
  void who_brings_all_he_wears_need_not_name_the_kinds() {
    Map<String, Object> mass =
        Sending.mass(with(MINIMAL, "brings", List.of(Map.of("role", "principal"))));

    assertEquals(
        List.of(Map.of("role", "principal", "count", 1, "kinds", List.of())), mass.get("brings"));
  }

  @Test
  void a_character_that_cannot_be_kept_is_refused_and_every_other_is_kept() {
    String halfACharacter =
        "{\"church\": \"ht\", \"start\": \"2026-12-08T18:30\", \"note\": \"a\\ud800b\"}";

    refusing.unfit(() -> post("/api/masses", halfACharacter), "note");
    assertEquals("Ünïcödé 漢字 🕯", Sending.mass(with(MINIMAL, "note", "Ünïcödé 漢字 🕯")).get("note"));
  }

  @Test
  void a_change_that_is_refused_leaves_the_mass_as_it_was() {
    Map<String, Object> mass = Sending.mass("ht", "2026-12-08T18:30");

    refusing.unfit(
        () -> put("/api/masses/" + mass.get("id"), Map.of("church", "nowhere", "minutes", 1)),
        "church",
        "minutes",
        "start");
  }
}
