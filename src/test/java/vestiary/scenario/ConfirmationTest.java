package vestiary.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * The bishop confirms at Holy Trinity on Saturday 5 December 2026, 10:30: he brings his own, five
 * concelebrate in red and three red sets are there, two deacons assist and there is one red
 * dalmatic.
 *
 * <p>Source: the invented scenario; common practice, no source. That a deacon may go without a
 * dalmatic from necessity: GIRM 338.
 */
@QuarkusTest
class ConfirmationTest {

  private static final String DAY = "2026-12-05";

  @Inject Scenario scenario;

  private Map<String, Object> confirmation;

  @BeforeEach
  void the_invented_cluster_without_the_funeral_of_that_morning() {
    scenario.load();
    Sending.delete("/api/masses/" + Asking.mass("sj", DAY + "T11:00").get("id"));
    confirmation = Asking.mass("ht", DAY + "T10:30");
  }

  @Test
  void five_concelebrants_need_red_and_three_red_sets_are_there() {
    Map<String, Object> clash = clash("chasuble");

    assertEquals("local", clash.get("level"));
    assertEquals("decide", clash.get("severity"));
    assertEquals(5, clash.get("needed"));
    assertEquals(3, clash.get("available"));
    assertEquals(
        List.of("OL-R1-C", "PP-R1-C", "SA-R1-C", "SA-R2-C", "SJ-R1-C", "SM-R1-C"),
        clash.get("elsewhere"));
    assertTrue(
        clash.get("sentence").toString().contains("Five concelebrants need red; three red sets"),
        clash.toString());
  }

  @Test
  void a_bishops_mass_keeps_the_church_busy_from_half_past_nine_to_a_quarter_to_one() {
    Map<String, Object> clash = clash("chasuble");

    assertEquals(DAY + "T09:30:00-06:00", clash.get("from"));
    assertEquals(DAY + "T12:45:00-06:00", clash.get("to"));
  }

  @Test
  void both_red_sets_come_from_one_church_in_one_carriage() {
    Planned plan = Planned.on(DAY).comesTo(List.of(0, 0, 0), List.of(0, 0, 1), 1, 14);

    Map<String, Object> journey = Asking.only(plan.journeysOf("SA-R1-C"));
    assertTrue(
        ((List<?>) journey.get("pieces"))
            .containsAll(List.of("SA-R1-C", "SA-R1-S", "SA-R2-C", "SA-R2-S")),
        journey.toString());
    assertEquals("sa", journey.get("from"));
    assertEquals(DAY + "T09:16:00-06:00", journey.get("leaveBy"));
    assertEquals(DAY + "T09:30:00-06:00", journey.get("arriveBy"));
    assertEquals(5, plan.worn(confirmation, "chasuble").size());
  }

  @Test
  void two_deacons_need_red_dalmatics_and_the_cluster_has_one() {
    Map<String, Object> clash = clash("dalmatic");

    assertEquals("cluster", clash.get("level"));
    assertEquals(2, clash.get("needed"));
    assertEquals(1, clash.get("available"));
  }

  @Test
  void one_deacon_goes_without_a_dalmatic_by_leave_of_the_missal() {
    Planned plan = Planned.on(DAY);

    assertEquals(1, plan.worn(confirmation, "dalmatic").size());
    Map<String, Object> without =
        Asking.only(
            Planning.list(plan.body(), "leftOut").stream()
                .filter(one -> one.get("mass").equals(confirmation.get("id")))
                .toList());
    assertEquals("deacon", without.get("role"));
    assertTrue(without.get("source").toString().contains("GIRM 338"), without.toString());
  }

  private static Map<String, Object> clash(String pieceKind) {
    return Asking.only(
        Asking.clashes(DAY, DAY).stream()
            .filter(c -> pieceKind.equals(c.get("pieceKind")) && "red".equals(c.get("colour")))
            .toList());
  }
}
