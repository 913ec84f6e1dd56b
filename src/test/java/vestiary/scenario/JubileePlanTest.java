package vestiary.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * What the plan makes of the jubilee at Saint Anne on Tuesday 8 December 2026, 18:30, where a white
 * set and a white dalmatic are short: both are had from Holy Trinity, fourteen minutes away.
 *
 * <p>Source: the invented scenario; common practice, no source.
 */
@QuarkusTest
class JubileePlanTest {

  private static final String DAY = "2026-12-08";

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  private Map<String, Object> jubilee;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
    jubilee = Asking.mass("sa", DAY + "T18:30");
  }

  @Test
  void one_carriage_of_fourteen_minutes_brings_whatever_is_short() {
    Planned plan = Planned.on(DAY).isWhole(1, 14);

    Map<String, Object> journey = Asking.only(plan.movements());
    assertEquals("ht", journey.get("from"));
    assertEquals("sa", journey.get("to"));
    assertEquals(true, journey.get("carriage"));
    assertEquals(DAY + "T17:46:00-06:00", journey.get("leaveBy"));
    assertEquals(DAY + "T18:00:00-06:00", journey.get("arriveBy"));
    assertEquals(3, plan.worn(jubilee, "chasuble").size());
  }

  @Test
  void the_dalmatic_that_is_out_on_loan_is_replaced_from_holy_trinity_in_the_same_carriage() {
    Planned plan = Planned.on(DAY).isWhole(1, 14);

    List<Object> dalmatics = plan.worn(jubilee, "dalmatic");
    assertEquals(2, dalmatics.size());
    assertFalse(dalmatics.contains("OL-D1"), dalmatics.toString());
    assertTrue(
        dalmatics.stream()
            .filter(piece -> !piece.equals("SA-D1"))
            .allMatch(piece -> plan.journeysOf(piece.toString()).equals(plan.movements())),
        plan.toString());
  }

  /** His Mass at Holy Trinity at 12:10 lasts an hour: cleared at 13:25, 14 minutes on the road. */
  @Test
  void whoever_concelebrates_and_comes_from_holy_trinity_anyway_brings_it_for_nothing() {
    Asking.change(jubilee, Map.of("named", List.of("ambrose-tarnwick", "leander-wexcombe")));

    Planned plan = Planned.on(DAY).isWhole(0, 0);

    Map<String, Object> journey = Asking.only(plan.movements());
    assertEquals("Father Tarnwick", journey.get("by"));
    assertEquals(DAY + "T13:25:00-06:00", journey.get("leaveBy"));
    assertEquals(DAY + "T13:39:00-06:00", journey.get("arriveBy"));
  }

  @Test
  void no_more_can_be_named_than_concelebrate_and_assist() {
    refusing.unfit(
        () ->
            Sending.put(
                "/api/masses/" + jubilee.get("id"),
                Sending.with(
                    jubilee, "named", List.of("one", "two", "three", "four", "five", "six"))),
        "named");
  }
}
