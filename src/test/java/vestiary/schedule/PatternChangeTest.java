package vestiary.schedule;

import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;
import static vestiary.scenario.Sending.put;
import static vestiary.scenario.Sending.with;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** Today is Monday 30 November 2026. */
@QuarkusTest
class PatternChangeTest {

  private static final Map<String, Object> SUNDAYS =
      Map.of(
          "church", "ht", "rrule", "FREQ=WEEKLY;BYDAY=SU", "starts", "2026-01-04", "time", "10:30");

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void two_churches() {
    scenario.empty();
    Sending.church("ht");
    Sending.church("sa");
    put("/api/journeys", Map.of("from", "ht", "to", "sa", "minutes", 14));
  }

  @Test
  void a_later_hour_moves_every_mass_to_come_and_none_that_is_past() {
    String id = entered(SUNDAYS);
    String first = id("2026-12-06T10:30");

    put("/api/patterns/" + id, with(SUNDAYS, "time", "11:00")).then().statusCode(200);

    assertEquals(first, id("2026-12-06T11:00"));
    assertEquals("10:30", hour("2026-11-29"));
    assertTrue(starts("2026-12-01", "2026-12-31").stream().allMatch(s -> s.contains("T11:00")));
    assertEquals(4, starts("2026-12-01", "2026-12-31").size());
  }

  @Test
  void what_a_change_would_do_is_told_and_nothing_is_changed() {
    String id = entered(SUNDAYS);
    starts("2026-12-01", "2026-12-13");
    Asking.change(mass("2026-12-06T10:30"), Map.of("note", "By hand"));

    refusing.unchanged(
        () ->
            post("/api/patterns/%s/effects".formatted(id), with(SUNDAYS, "time", "11:00"))
                .then()
                .statusCode(200)
                .body("[0].effect", equalTo("stays"))
                .body("[0].date", equalTo("2026-12-06"))
                .body("[1].effect", equalTo("moves"))
                .body("[1].start", equalTo("2026-12-13T10:30:00-06:00")));
  }

  @Test
  void what_was_touched_by_hand_stays_unless_it_is_taken_along() {
    String id = entered(SUNDAYS);
    Asking.change(mass("2026-12-06T10:30"), Map.of("note", "Choir"));
    Asking.change(mass("2026-12-13T10:30"), Map.of("start", "2026-12-13T12:00"));

    put("/api/patterns/" + id, with(SUNDAYS, "time", "11:00")).then().statusCode(200);

    assertEquals("10:30", hour("2026-12-06"));
    assertEquals("12:00", hour("2026-12-13"));

    put("/api/patterns/%s?takeAlong=true".formatted(id), with(SUNDAYS, "time", "09:30"))
        .then()
        .statusCode(200);

    assertEquals("10:30", hour("2026-12-06"));
    assertEquals("12:00", hour("2026-12-13"));
    assertEquals("09:30", hour("2026-12-20"));
  }

  @Test
  void a_mass_with_a_note_at_its_usual_hour_moves_if_it_is_taken_along_and_keeps_its_note() {
    String id = entered(SUNDAYS);
    Asking.change(mass("2026-12-06T10:30"), Map.of("note", "Choir"));

    put("/api/patterns/%s?takeAlong=true".formatted(id), with(SUNDAYS, "time", "11:00"))
        .then()
        .statusCode(200);

    assertEquals("Choir", mass("2026-12-06T11:00").get("note"));
  }

  @Test
  void another_day_of_the_week_moves_each_mass_within_its_week() {
    String id = entered(SUNDAYS);
    String first = id("2026-12-06T10:30");

    put(
            "/api/patterns/" + id,
            with(with(SUNDAYS, "rrule", "FREQ=WEEKLY;BYDAY=SA"), "time", "17:00"))
        .then()
        .statusCode(200);

    assertEquals(first, id("2026-12-05T17:00"));
    assertEquals(List.of(), starts("2026-12-06", "2026-12-06"));
  }

  @Test
  void what_is_set_aside_goes_along_and_is_given_up_where_the_mass_goes() {
    Sending.piece("HT-V1-C", "chasuble", "violet", "ht");
    String id = entered(SUNDAYS);
    String advent = id("2026-12-06T10:30");
    post("/api/reservations", Map.of("piece", "HT-V1-C", "mass", advent)).then().statusCode(201);

    put("/api/patterns/" + id, with(SUNDAYS, "time", "11:00")).then().statusCode(200);

    get("/api/reservations?mass=" + advent)
        .then()
        .body("findAll { it.state == 'held' }.from", contains("2026-12-06T10:30:00-06:00"));

    delete("/api/patterns/" + id).then().statusCode(204);

    assertTrue(
        (Boolean) Sending.get("/api/masses/" + advent).jsonPath().getMap("").get("cancelled"));
    assertEquals(
        List.of(),
        Asking.list("/api/reservations?mass=" + advent).stream()
            .filter(r -> "held".equals(r.get("state")))
            .toList());
  }

  @Test
  void a_change_from_a_date_ends_the_pattern_before_it_and_begins_another() {
    String id = entered(SUNDAYS);

    put("/api/patterns/%s?from=2026-12-20".formatted(id), with(SUNDAYS, "time", "11:00"))
        .then()
        .statusCode(200);

    assertEquals(
        List.of("10:30", "10:30", "11:00", "11:00"),
        starts("2026-12-01", "2026-12-31").stream().map(s -> s.substring(11, 16)).toList());
    get("/api/patterns/" + id).then().body("until", equalTo("2026-12-19"));
    assertEquals(
        List.of("2026-01-04", "2026-12-20"),
        Asking.list("/api/patterns").stream().map(p -> p.get("starts")).sorted().toList());
  }

  @Test
  void every_other_saturday_goes_on_as_it_was_counted_when_it_changes_from_a_date() {
    Map<String, Object> saturdays =
        with(with(SUNDAYS, "rrule", "FREQ=WEEKLY;INTERVAL=2;BYDAY=SA"), "starts", "2026-01-03");
    String id = entered(saturdays);
    List<String> before = dates("2026-12-01", "2027-03-31");

    put("/api/patterns/%s?from=2026-12-14".formatted(id), with(saturdays, "time", "09:00"))
        .then()
        .statusCode(200);

    assertEquals(before, dates("2026-12-01", "2027-03-31"));
  }

  @Test
  void an_end_takes_off_what_lies_behind_it() {
    String id = entered(SUNDAYS);

    put("/api/patterns/" + id, with(SUNDAYS, "until", "2026-12-13")).then().statusCode(200);

    assertEquals(List.of("2026-12-06", "2026-12-13"), dates("2026-12-01", "2027-02-28"));
    assertEquals("10:30", hour("2026-11-29"));
  }

  @Test
  void another_celebrant_changes_what_nobody_touched() {
    String id = entered(SUNDAYS);
    starts("2026-12-06", "2026-12-06");

    put("/api/patterns/" + id, with(SUNDAYS, "celebrant", "Ambrose Tarnwick"))
        .then()
        .statusCode(200)
        .body("[0].effect", equalTo("changes"));

    assertEquals("ambrose-tarnwick", mass("2026-12-06T10:30").get("celebrant"));
  }

  @Test
  void holy_days_have_their_own_pattern_and_the_usual_one_gives_way() {
    entered(
        Map.of(
            "church",
            "ht",
            "rrule",
            "FREQ=WEEKLY;BYDAY=TU",
            "starts",
            "2026-01-06",
            "time",
            "08:00",
            "notOnHolyDays",
            true));
    post(
            "/api/patterns",
            Map.of("church", "ht", "days", "holy-days", "starts", "2026-01-01", "time", "19:00"))
        .then()
        .statusCode(201)
        .body("words", equalTo("Holy days of obligation at 19:00"));

    assertEquals(
        List.of(
            "2026-12-01T08:00",
            "2026-12-08T19:00",
            "2026-12-15T08:00",
            "2026-12-22T08:00",
            "2026-12-25T19:00",
            "2026-12-29T08:00"),
        starts("2026-12-01", "2026-12-31").stream().map(s -> s.substring(0, 16)).toList());
  }

  @Test
  void a_version_that_was_overtaken_is_refused() {
    String id = entered(SUNDAYS);
    put("/api/patterns/" + id, with(SUNDAYS, "time", "11:00")).then().statusCode(200);

    put("/api/patterns/" + id, with(with(SUNDAYS, "time", "12:00"), "version", 0))
        .then()
        .statusCode(409);
    assertEquals("11:00", hour("2026-12-06"));
  }

  @Test
  void bounds_that_never_come_together_or_are_none_are_refused_by_name() {
    String id = entered(SUNDAYS);
    Stream.of(
            Map.entry("seasons", (Object) List.of("autumn")),
            Map.entry("months", (Object) List.of(13)),
            Map.entry("until", (Object) "2025-12-31"),
            Map.entry("school", (Object) "sometimes"),
            Map.entry("except", (Object) List.of("soon")))
        .forEach(
            bad ->
                refusing.unfit(
                    () -> put("/api/patterns/" + id, with(SUNDAYS, bad.getKey(), bad.getValue())),
                    bad.getKey()));
    refusing.unfit(
        () ->
            put(
                "/api/patterns/" + id,
                with(with(SUNDAYS, "seasons", List.of("advent")), "months", List.of(7))),
        "rrule");
    refusing.unfit(() -> put("/api/patterns/" + id, with(SUNDAYS, "days", "holy-days")), "rrule");
    refusing.unfit(() -> put("/api/patterns/" + id, with(SUNDAYS, "school", "in-term")), "rrule");
  }

  @Test
  void a_mass_cancelled_for_a_large_liturgy_elsewhere_says_where_people_go() {
    entered(SUNDAYS);
    Map<String, Object> other =
        Sending.mass(Map.of("church", "sa", "start", "2026-12-06T11:00", "minutes", 90));
    String usual = id("2026-12-06T10:30");

    delete("/api/masses/%s?takenOverBy=%s".formatted(usual, other.get("id")))
        .then()
        .statusCode(204);

    assertEquals(List.of(), Asking.masses("ht", "2026-12-06"));
    get("/api/masses?from=2026-12-06&to=2026-12-06&church=ht&announced=true")
        .then()
        .body("$", hasSize(1))
        .body("[0].cancelled", equalTo(true))
        .body("[0].usualStart", equalTo("2026-12-06T10:30:00-06:00"))
        .body("[0].takenOverBy", equalTo(other.get("id")));
    refusing.refused(
        422,
        "against-rule",
        () -> delete("/api/masses/%s?takenOverBy=%s".formatted(other.get("id"), other.get("id"))));
  }

  @Test
  void a_moved_mass_says_where_it_usually_is() {
    entered(SUNDAYS);
    Map<String, Object> usual = mass("2026-12-06T10:30");
    assertNull(usual.get("usualStart"));

    Asking.change(usual, Map.of("start", "2026-12-05T18:00", "church", "sa"));

    get("/api/masses?from=2026-12-06&to=2026-12-06&announced=true")
        .then()
        .body("[0].start", equalTo("2026-12-05T18:00:00-06:00"))
        .body("[0].usualStart", equalTo("2026-12-06T10:30:00-06:00"))
        .body("[0].usualChurch", equalTo("ht"));
  }

  private static String entered(Map<String, Object> pattern) {
    return post("/api/patterns", pattern).then().statusCode(201).extract().path("id");
  }

  private static Map<String, Object> mass(String start) {
    return Asking.mass("ht", start);
  }

  private static String id(String start) {
    return mass(start).get("id").toString();
  }

  private static String hour(String date) {
    return Asking.only(starts(date, date)).substring(11, 16);
  }

  private static List<String> dates(String from, String to) {
    return starts(from, to).stream().map(s -> s.substring(0, 10)).toList();
  }

  private static List<String> starts(String from, String to) {
    return get("/api/masses?from=%s&to=%s".formatted(from, to))
        .then()
        .statusCode(200)
        .extract()
        .jsonPath()
        .getList("start");
  }
}
