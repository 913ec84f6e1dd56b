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
 * A funeral in white at Saint Joseph on Saturday 5 December 2026, 11:00, with one concelebrant: of
 * its two white sets one is being mended.
 *
 * <p>Source: the invented scenario; common practice, no source. That white may be worn at funerals
 * in the United States: GIRM 346 with the adaptation of its bishops.
 */
@QuarkusTest
class FuneralTest {

  private static final String DAY = "2026-12-05";

  @Inject Scenario scenario;

  private Map<String, Object> funeral;

  @BeforeEach
  void the_invented_cluster_without_the_confirmation_of_that_morning() {
    scenario.load();
    Sending.delete("/api/masses/" + Asking.mass("ht", DAY + "T10:30").get("id"));
    funeral = Asking.mass("sj", DAY + "T11:00");
  }

  @Test
  void two_need_white_and_one_white_set_is_there() {
    Map<String, Object> clash =
        Asking.only(
            Asking.clashes(DAY, DAY).stream()
                .filter(c -> "chasuble".equals(c.get("pieceKind")))
                .toList());

    assertEquals("local", clash.get("level"));
    assertEquals(List.of("SJ-W1-C"), clash.get("pieces"));
    assertEquals(2, clash.get("needed"));
    assertEquals(1, clash.get("available"));
  }

  @Test
  void the_nearest_church_sends_its_white_set_if_nobody_drives_there_anyway() {
    Asking.change(funeral, Map.of("celebrant", "fintan-oakhallow"));

    Planned plan = Planned.on(DAY).isWhole(1, 15);

    Map<String, Object> journey =
        Asking.only(plan.movements().stream().filter(m -> m.get("to").equals("sj")).toList());
    assertEquals("pp", journey.get("from"));
    assertEquals(DAY + "T10:25:00-06:00", journey.get("leaveBy"));
    assertEquals(DAY + "T10:40:00-06:00", journey.get("arriveBy"));
  }

  /**
   * His Mass at Holy Trinity at 8:30 ends at 9:00 and is cleared at 9:15; 18 minutes on the road.
   */
  @Test
  void the_celebrant_who_comes_from_holy_trinity_anyway_brings_one_for_nothing() {
    Planned plan = Planned.on(DAY).isWhole(0, 0);

    Map<String, Object> journey =
        Asking.only(plan.movements().stream().filter(m -> m.get("to").equals("sj")).toList());
    assertEquals("ht", journey.get("from"));
    assertEquals("Father Tarnwick", journey.get("by"));
    assertEquals(false, journey.get("carriage"));
    assertEquals(DAY + "T09:15:00-06:00", journey.get("leaveBy"));
    assertEquals(DAY + "T09:33:00-06:00", journey.get("arriveBy"));
  }

  @Test
  void in_violet_both_are_dressed_with_nothing_driven_for_it() {
    Asking.change(funeral, Map.of("colour", "violet"));

    Planned plan = Planned.on(DAY).isWhole(0, 0);

    plan.worn(funeral, "chasuble")
        .forEach(piece -> assertTrue(piece.toString().contains("-V"), piece.toString()));
  }
}
