package vestiary.schedule;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Sending.post;
import static vestiary.scenario.Sending.put;
import static vestiary.scenario.Sending.with;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/**
 * When a Mass starts, in a cluster whose clocks change: America/Chicago goes forward on 14 March
 * 2027 and back on 1 November 2026, at 02:00 (second Sunday of March, first of November: Energy
 * Policy Act of 2005, section 110).
 */
@QuarkusTest
class MassStartTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void one_church_in_chicago() {
    scenario.empty();
    Sending.church("ht");
  }

  @ParameterizedTest
  @CsvSource({
    "2026-12-08T18:30, 2026-12-08T18:30:00-06:00",
    "2026-07-08T18:30, 2026-07-08T18:30:00-05:00",
    "2026-12-08T18:30:00-06:00, 2026-12-08T18:30:00-06:00",
    "2026-12-08T18:30-06:00, 2026-12-08T18:30:00-06:00",
    "2026-12-09T00:30:00Z, 2026-12-08T18:30:00-06:00",
    "2026-12-09T01:30+01:00, 2026-12-08T18:30:00-06:00",
    "2027-03-14T01:59, 2027-03-14T01:59:00-06:00",
    "2027-03-14T03:00, 2027-03-14T03:00:00-05:00",
    "2026-11-01T01:30, 2026-11-01T01:30:00-05:00",
    "2026-11-01T01:30-06:00, 2026-11-01T01:30:00-06:00",
    "2026-11-01T02:00, 2026-11-01T02:00:00-06:00",
    "1970-01-01T00:00, 1970-01-01T00:00:00-06:00",
    "2300-12-30T23:59, 2300-12-30T23:59:00-06:00"
  })
  void a_start_is_local_unless_it_carries_its_offset(String start, String answered) {
    assertEquals(answered, Sending.mass("ht", start).get("start"));
  }

  @Test
  void no_clock_shows_an_hour_of_springs_gap() {
    refusing
        .refused(422, "against-rule", () -> post("/api/masses", at("2027-03-14T02:30")))
        .body("detail", containsString("02:30"))
        .body("faults[0].field", equalTo("start"));
  }

  @Test
  void nothing_is_moved_into_springs_gap() {
    Map<String, Object> mass = Sending.mass("ht", "2027-03-14T10:30");

    refusing.refused(
        422,
        "against-rule",
        () -> put("/api/masses/" + mass.get("id"), with(mass, "start", "2027-03-14T02:30")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-12-08",
        "18:30",
        "2026-12-08 18:30",
        "2026-13-08T18:30",
        "2026-02-29T18:30",
        "2026-12-08T24:30",
        "2026-12-08T18:30[America/Chicago]",
        "2026-12-08T18:30+25:00",
        "1969-12-31T18:30",
        "2300-12-31T18:30",
        "+999999999-12-31T18:30",
        "+999999999-12-31T23:59:59-18:00",
        "-999999999-01-01T00:00:00+18:00",
        "8 December"
      })
  void what_is_no_start_is_refused(String start) {
    refusing.unfit(() -> post("/api/masses", at(start)), "start");
  }

  private static Map<String, Object> at(String start) {
    return Map.of("church", "ht", "start", start);
  }
}
