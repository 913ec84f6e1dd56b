package vestiary.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * What the plan makes of one rose set and four Masses on 12 and 13 December 2026: three wear it,
 * and whoever celebrates them takes it along.
 *
 * <p>Source: the invented scenario; common practice, no source. That violet may be worn instead of
 * rose: GIRM 346 d and f.
 */
@QuarkusTest
class RoseSundayPlanTest {

  private static final String SATURDAY = "2026-12-12";
  private static final String SUNDAY = "2026-12-13";

  @Inject Scenario scenario;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void three_masses_wear_rose_and_the_upper_valley_violet_with_nothing_driven_for_it() {
    // The second step is the deacon's, for whom there is no rose dalmatic anywhere.
    Planned plan = Planned.of(SATURDAY, SUNDAY).comesTo(List.of(0, 0, 0), List.of(0, 0, 2), 0, 0);

    for (Map<String, Object> mass :
        List.of(
            Asking.mass("ht", SATURDAY + "T17:00"),
            Asking.mass("sj", SUNDAY + "T08:00"),
            Asking.mass("ht", SUNDAY + "T10:30"))) {
      assertEquals(List.of("HT-RO1-C"), plan.worn(mass, "chasuble"), mass.toString());
    }
    Map<String, Object> upperValley = Asking.mass("pp", SUNDAY + "T08:30");
    assertEquals(List.of("PP-V1-C"), plan.worn(upperValley, "chasuble"));
    assertEquals(List.of("violet-for-rose"), plan.substitutes(upperValley, "chasuble"));
    assertEquals(
        List.of("violet-for-rose"),
        plan.substitutes(Asking.mass("ht", SUNDAY + "T10:30"), "dalmatic"));
  }

  /** Ends at 9:00, cleared at 9:15, eighteen minutes on the road: 9:33, before set-out at 10:00. */
  @Test
  void the_celebrant_of_all_three_carries_it_there_and_back() {
    List<Map<String, Object>> journeys = Planned.of(SATURDAY, SUNDAY).journeysOf("HT-RO1-C");

    assertEquals(2, journeys.size(), journeys.toString());
    assertJourney(journeys.get(0), "ht", "sj", "07:12", "07:30");
    assertJourney(journeys.get(1), "sj", "ht", "09:15", "09:33");
  }

  private static void assertJourney(
      Map<String, Object> journey, String from, String to, String leaves, String arrives) {
    assertEquals(
        List.of(
            from,
            to,
            "Father Tarnwick",
            false,
            "%sT%s:00-06:00".formatted(SUNDAY, leaves),
            "%sT%s:00-06:00".formatted(SUNDAY, arrives)),
        List.of(
            journey.get("from"),
            journey.get("to"),
            journey.get("by"),
            journey.get("carriage"),
            journey.get("leaveBy"),
            journey.get("arriveBy")),
        journey.toString());
  }
}
