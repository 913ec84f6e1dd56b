package vestiary.cluster;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;
import static vestiary.scenario.Sending.put;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;

@QuarkusTest
class SettingsResourceTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void an_empty_cluster() {
    scenario.empty();
  }

  @Test
  void a_new_cluster_keeps_the_general_calendar_and_the_usual_policies() {
    get("/api/settings")
        .then()
        .statusCode(200)
        .body("calendar", equalTo("general"))
        .body("epiphany", equalTo("date"))
        .body("timeZone", equalTo("America/Chicago"))
        .body("languages", equalTo(List.of("en")))
        .body("policies.anticipatedFrom", equalTo("16:00"))
        .body("policies.eveningRule", equalTo("precept"))
        .body("policies.ladderOrder", equalTo("stole"))
        .body("policies.whiteForAll", equalTo(false))
        .body("policies.turnMinutes", equalTo(5))
        .body("policies.weekdaySetOut", equalTo(20))
        .body("policies.largeSetOut", equalTo(60))
        .body("policies.largeClearance", equalTo(30))
        .body("policies.countBy", equalTo("calendar"))
        .body("policies.permittedWeekday", equalTo(1))
        .body("policies.permittedSunday", equalTo(1))
        .body("policies.countAlbs", equalTo(true))
        .body("policies.pontificals", equalTo(false));
  }

  @Test
  void what_is_not_given_stays() {
    Map<String, Object> before = get("/api/settings").jsonPath().getMap("");

    put("/api/settings", Map.of("policies", Map.of("turnMinutes", 0))).then().statusCode(200);

    Map<String, Object> wanted = new HashMap<>(before);
    Map<String, Object> policies = new HashMap<>(policies(before));
    policies.put("turnMinutes", 0);
    wanted.put("policies", policies);
    assertEquals(wanted, get("/api/settings").jsonPath().getMap(""));
  }

  @Test
  void an_empty_object_changes_nothing() {
    Map<String, Object> before = get("/api/settings").jsonPath().getMap("");

    put("/api/settings", Map.of()).then().statusCode(200);

    assertEquals(before, get("/api/settings").jsonPath().getMap(""));
  }

  @Test
  void what_is_answered_can_be_sent_back() {
    Map<String, Object> before = get("/api/settings").jsonPath().getMap("");

    put("/api/settings", before).then().statusCode(200);

    assertEquals(before, get("/api/settings").jsonPath().getMap(""));
  }

  @Test
  void a_calendar_chosen_anew_brings_its_own_options() {
    put("/api/settings", Map.of("calendar", "us"))
        .then()
        .statusCode(200)
        .body("epiphany", equalTo("sunday"))
        .body("ascension", equalTo("sunday"))
        .body("corpusChristi", equalTo("sunday"));
  }

  @Test
  void options_given_with_a_calendar_hold() {
    put("/api/settings", Map.of("calendar", "us", "ascension", "thursday"))
        .then()
        .statusCode(200)
        .body("epiphany", equalTo("sunday"))
        .body("ascension", equalTo("thursday"));
  }

  @Test
  void a_calendar_without_the_title_of_a_church_is_refused() {
    put("/api/settings", Map.of("calendar", "us")).then().statusCode(200);
    post(
            "/api/churches",
            Map.of("slug", "ann", "name", "Saint Ann", "titular", "elizabeth-ann-seton"))
        .then()
        .statusCode(201);

    refusing.unfit(() -> put("/api/settings", Map.of("calendar", "ireland")), "calendar");
    get("/api/churches/ann/days?from=2027-01-04&to=2027-01-04").then().statusCode(200);
  }

  @ParameterizedTest
  @CsvSource({
    "calendar, mars, calendar",
    "epiphany, thursday, epiphany",
    "ascension, date, ascension",
    "corpusChristi, date, corpusChristi",
    "timeZone, America/Atlantis, timeZone",
    "timeZone, CST6, timeZone",
    "name, '', name"
  })
  void an_unknown_word_is_refused_at_its_field(String field, String value, String fault) {
    refusing.unfit(() -> put("/api/settings", Map.of(field, value)), fault);
  }

  @ParameterizedTest
  @CsvSource({
    "anticipatedFrom, 25:00",
    "anticipatedFrom, noon",
    "eveningRule, whim",
    "ladderOrder, gold",
    "countBy, moon",
    "turnMinutes, 61",
    "turnMinutes, -1",
    "weekdaySetOut, 241",
    "largeSetOut, -1",
    "largeClearance, 241",
    "permittedWeekday, 0",
    "permittedSunday, 10"
  })
  void an_unfit_policy_is_refused_at_its_field(String field, String value) {
    refusing.unfit(
        () -> put("/api/settings", Map.of("policies", Map.of(field, value))), "policies." + field);
  }

  @Test
  void an_unknown_language_is_refused() {
    refusing.unfit(() -> put("/api/settings", Map.of("languages", List.of("xx"))), "languages");
    refusing.unfit(() -> put("/api/settings", Map.of("languages", List.of("en", ""))), "languages");
  }

  @Test
  void all_that_is_wrong_is_told_at_once() {
    refusing.unfit(
        () ->
            put(
                "/api/settings",
                Map.of(
                    "name", " ",
                    "calendar", "mars",
                    "timeZone", "Mars/Olympus",
                    "policies", Map.of("turnMinutes", 99, "countBy", "moon"))),
        "name",
        "calendar",
        "timeZone",
        "policies.turnMinutes",
        "policies.countBy");
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> policies(Map<String, Object> settings) {
    return (Map<String, Object>) settings.get("policies");
  }
}
