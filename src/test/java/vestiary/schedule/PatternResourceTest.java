package vestiary.schedule;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;
import static vestiary.scenario.Sending.with;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
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
class PatternResourceTest {

  private static final Map<String, Object> SUNDAYS =
      Map.of(
          "church", "ht", "rrule", "FREQ=WEEKLY;BYDAY=SU", "starts", "2026-01-04", "time", "10:30");

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void one_church() {
    scenario.empty();
    Sending.church("ht");
  }

  @Test
  void a_pattern_is_entered_and_listed() {
    post("/api/patterns", SUNDAYS)
        .then()
        .statusCode(201)
        .body("church", equalTo("ht"))
        .body("rrule", equalTo("FREQ=WEEKLY;BYDAY=SU"))
        .body("starts", equalTo("2026-01-04"))
        .body("time", equalTo("10:30"))
        .body("minutes", equalTo(60))
        .body("mass", nullValue())
        .body("concelebrants", equalTo(0));

    assertEquals(1, Asking.list("/api/patterns").size());
  }

  @Test
  void everything_that_is_given_reaches_its_masses() {
    post(
            "/api/patterns",
            Map.ofEntries(
                Map.entry("church", "ht"),
                Map.entry("rrule", "FREQ=MONTHLY;BYDAY=1FR"),
                Map.entry("starts", "2026-12-01"),
                Map.entry("time", "19:00"),
                Map.entry("minutes", 45),
                Map.entry("mass", "votive"),
                Map.entry("celebrant", "anselm-brightwater"),
                Map.entry("concelebrants", 1),
                Map.entry("deacons", 2),
                Map.entry("note", "First Fridays")))
        .then()
        .statusCode(201)
        .body("celebrant", equalTo("anselm-brightwater"));

    Map<String, Object> mass = Asking.mass("ht", "2027-01-01T19:00");
    assertEquals(45, mass.get("minutes"));
    assertEquals("votive", mass.get("mass"));
    assertEquals("anselm-brightwater", mass.get("celebrant"));
    assertEquals(1, mass.get("concelebrants"));
    assertEquals(2, mass.get("deacons"));
    assertEquals("First Fridays", mass.get("note"));
  }

  @Test
  void a_year_of_sundays_keeps_its_local_time_over_both_clock_changes() {
    post("/api/patterns", SUNDAYS).then().statusCode(201);

    List<String> starts = starts("2026-11-29", "2027-11-27");

    assertEquals(52, starts.size());
    assertTrue(starts.stream().allMatch(s -> s.substring(11, 16).equals("10:30")));
    assertEquals("2027-03-07T10:30:00-06:00", starts.get(14));
    assertEquals("2027-03-14T10:30:00-05:00", starts.get(15));
    assertEquals("2027-11-07T10:30:00-06:00", starts.get(49));
  }

  @Test
  void a_mass_in_springs_gap_is_said_an_hour_later_rather_than_lost() {
    post("/api/patterns", with(SUNDAYS, "time", "02:30")).then().statusCode(201);

    assertEquals(List.of("2027-03-14T03:30:00-05:00"), starts("2027-03-14", "2027-03-14"));
  }

  @Test
  void a_mass_touched_by_hand_is_not_overwritten() {
    post("/api/patterns", SUNDAYS).then().statusCode(201);
    Map<String, Object> moved = Asking.mass("ht", "2026-12-06T10:30");
    Asking.change(moved, Map.of("start", "2026-12-06T11:00", "note", "Later for the fair"));
    Map<String, Object> cancelled = Asking.mass("ht", "2026-12-13T10:30");
    delete("/api/masses/" + cancelled.get("id")).then().statusCode(204);

    starts("2026-12-01", "2027-12-01");

    assertEquals("Later for the fair", Asking.mass("ht", "2026-12-06T11:00").get("note"));
    assertEquals(1, Asking.masses("ht", "2026-12-06").size());
    assertEquals(List.of(), Asking.masses("ht", "2026-12-13"));
  }

  @Test
  void two_readers_at_once_make_each_mass_once() {
    post("/api/patterns", SUNDAYS).then().statusCode(201);

    List<CompletableFuture<Integer>> readers =
        IntStream.range(0, 4)
            .mapToObj(i -> CompletableFuture.supplyAsync(() -> count("2026-12-01", "2027-11-30")))
            .toList();

    readers.forEach(r -> assertEquals(52, r.join()));
    List<String> starts = starts("2026-12-01", "2027-11-30");
    assertEquals(52, starts.size());
    assertEquals(52, new HashSet<>(starts).size());
  }

  @Test
  void a_pattern_entered_later_catches_up_with_the_others() {
    post("/api/patterns", SUNDAYS).then().statusCode(201);
    assertEquals(4, count("2026-12-01", "2026-12-31"));

    post("/api/patterns", with(SUNDAYS, "time", "17:30")).then().statusCode(201);

    assertEquals(8, count("2026-12-01", "2026-12-31"));
  }

  @Test
  void the_same_pattern_sent_twice_is_kept_once() {
    String id = post("/api/patterns", SUNDAYS).jsonPath().getString("id");

    post("/api/patterns", SUNDAYS).then().body("id", equalTo(id));

    assertEquals(1, Asking.list("/api/patterns").size());
    assertEquals(4, count("2026-12-01", "2026-12-31"));
  }

  @Test
  void a_pattern_taken_off_leaves_what_was_touched_and_what_is_past() {
    String id = post("/api/patterns", SUNDAYS).jsonPath().getString("id");
    Asking.change(Asking.mass("ht", "2026-12-06T10:30"), Map.of("note", "Kept"));
    int past = count("2026-11-01", "2026-11-29");

    delete("/api/patterns/" + id).then().statusCode(204);

    assertEquals(List.of(), Asking.list("/api/patterns"));
    assertEquals(List.of("2026-12-06T10:30:00-06:00"), starts("2026-11-30", "2027-06-30"));
    assertEquals(past, count("2026-11-01", "2026-11-29"));
    refusing.notThere(() -> delete("/api/patterns/" + id));
  }

  @Test
  void a_rule_that_ends_yields_no_more() {
    post("/api/patterns", with(SUNDAYS, "rrule", "FREQ=WEEKLY;BYDAY=SU;UNTIL=20261213"))
        .then()
        .statusCode(201);

    assertEquals(
        List.of("2026-12-06T10:30:00-06:00", "2026-12-13T10:30:00-06:00"),
        starts("2026-12-01", "2027-01-31"));
  }

  @Test
  void a_pattern_that_began_long_ago_still_yields_its_masses() {
    post("/api/patterns", with(with(SUNDAYS, "rrule", "FREQ=DAILY"), "starts", "0100-01-01"))
        .then()
        .statusCode(201);

    assertEquals(7, count("2026-12-07", "2026-12-13"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30",
        "FREQ=DAILY;BYHOUR=8,18",
        "FREQ=WEEKLY;BYDAY=SU;UNTIL=20261213T235959Z",
        "FREQ=WEEKLY;BYDAY=SU;UNTIL=20250101"
      })
  void a_rule_that_names_no_day_or_says_a_time_is_refused(String rrule) {
    refusing.unfit(() -> post("/api/patterns", with(SUNDAYS, "rrule", rrule)), "rrule");
  }

  @ParameterizedTest
  @CsvSource({
    "rrule, WHENEVER, rrule",
    "rrule, FREQ=HOURLY, rrule",
    "rrule, '', rrule",
    "starts, soon, starts",
    "starts, +999999999-01-01, starts",
    "time, 24:30, time",
    "time, '', time",
    "minutes, 4, minutes",
    "mass, high, mass",
    "church, nowhere, church",
    "concelebrants, -1, concelebrants",
    "deacons, 201, deacons"
  })
  void an_unfit_field_is_refused_by_name(String field, String value, String fault) {
    refusing.unfit(() -> post("/api/patterns", with(SUNDAYS, field, value)), fault);
  }

  @Test
  void missing_fields_are_all_told_at_once() {
    refusing.unfit(() -> post("/api/patterns", Map.of()), "church", "rrule", "starts", "time");
  }

  @ParameterizedTest
  @ValueSource(strings = {"x", "0190a0b0-0000-7000-8000-000000000000"})
  void an_unknown_pattern_is_not_there(String id) {
    refusing.notThere(() -> delete("/api/patterns/" + id));
  }

  private static List<String> starts(String from, String to) {
    return get("/api/masses?from=%s&to=%s".formatted(from, to))
        .then()
        .statusCode(200)
        .extract()
        .jsonPath()
        .getList("start");
  }

  private static int count(String from, String to) {
    return starts(from, to).size();
  }
}
