package vestiary.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.allocation.plan.Ride;
import vestiary.cluster.Church;
import vestiary.planning.CheckClashes;
import vestiary.planning.SpanToCheck;
import vestiary.scenario.Asking;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.vesting.ChurchId;
import vestiary.web.English;

/** Who drives from one church to another anyway, and when. */
@QuarkusTest
class RidesTest {

  private static final String SUNDAY = "2026-12-13";

  @Inject Scenario scenario;
  @Inject CheckClashes check;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  /** Ends at 9:00, cleared at 9:15, eighteen minutes; his next Mass is at 10:30. */
  @Test
  void a_celebrant_with_time_waits_until_what_he_wore_is_cleared() {
    assertEquals(List.of("09:15 to 09:33"), hours("Father Tarnwick", "sj", "ht"));
  }

  /** Leaving at 9:15 he would come at 9:33, less than a quarter of an hour before. */
  @Test
  void a_celebrant_in_haste_leaves_ten_minutes_after_mass() {
    Asking.change(Asking.mass("ht", SUNDAY + "T10:30"), Map.of("start", SUNDAY + "T09:45"));

    assertEquals(List.of("09:10 to 09:28"), hours("Father Tarnwick", "sj", "ht"));
  }

  @Test
  void whoever_comes_too_late_in_any_case_brings_nothing() {
    Asking.change(Asking.mass("ht", SUNDAY + "T10:30"), Map.of("start", SUNDAY + "T09:20"));

    assertEquals(List.of(), hours("Father Tarnwick", "sj", "ht"));
  }

  /** From the evening Mass at Holy Trinity: eighteen minutes, set-out at 7:30. */
  @Test
  void from_the_evening_to_the_next_morning_he_comes_in_time_to_set_out() {
    assertEquals(List.of("07:12 to 07:30"), hours("Father Tarnwick", "ht", "sj"));
  }

  @Test
  void whoever_is_away_takes_nothing_along_though_he_is_still_named() {
    Sending.post("/api/people/ambrose-tarnwick/absences", Map.of("from", SUNDAY, "to", SUNDAY))
        .then()
        .statusCode(201);

    assertEquals(List.of(), hours("Father Tarnwick", "sj", "ht"));
  }

  @Test
  void a_deacon_who_is_named_at_two_churches_drives_as_a_celebrant_does() {
    assertEquals(List.of(), hours("Deacon Greywater", "sj", "sa"));

    Asking.change(
        Asking.mass("sj", SUNDAY + "T08:00"),
        Map.of("deacons", 1, "named", List.of("tobias-greywater")));
    Asking.change(
        Asking.mass("sa", SUNDAY + "T10:45"),
        Map.of("deacons", 1, "named", List.of("tobias-greywater")));

    assertEquals(List.of("09:15 to 09:35"), hours("Deacon Greywater", "sj", "sa"));
  }

  private List<String> hours(String who, String from, String to) {
    List<String> hours = new ArrayList<>();
    scenario.within(
        scenario.ours(),
        () -> {
          SpanToCheck span = check.load(LocalDate.parse(SUNDAY), LocalDate.parse(SUNDAY));
          Rides.of(
                  span.masses(),
                  span.journeys(),
                  span.cluster().policies().vesting(),
                  span.attendance())
              .stream()
              .filter(ride -> ride.who().equals(who))
              .filter(ride -> ride.from().equals(church(span, from)))
              .filter(ride -> ride.to().equals(church(span, to)))
              .forEach(ride -> hours.add(hours(ride)));
        });
    return hours;
  }

  private static String hours(Ride ride) {
    return "%s to %s"
        .formatted(
            English.clock(ride.departs().atZone(Scenario.ZONE)),
            English.clock(ride.arrives().atZone(Scenario.ZONE)));
  }

  private static ChurchId church(SpanToCheck span, String slug) {
    return span.churches().stream()
        .filter(church -> church.slug().equals(slug))
        .map(Church::id)
        .findFirst()
        .orElseThrow();
  }
}
