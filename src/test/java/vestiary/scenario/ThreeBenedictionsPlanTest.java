package vestiary.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Blessing with the Blessed Sacrament in three churches on Sunday 6 December 2026, and two white
 * copes and two humeral veils. Those of Holy Trinity are free at 16:45 and at Our Lady's at 16:57,
 * so that with half an hour to set out nothing earlier than 17:27 can be dressed.
 *
 * <p>Source: the invented scenario; common practice, no source.
 */
@QuarkusTest
class ThreeBenedictionsPlanTest {

  private static final String DAY = "2026-12-06";
  private static final List<Integer> NONE = List.of(0, 0, 0);

  @Inject Scenario scenario;

  private Map<String, Object> third;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
    third = Asking.mass("ol", DAY + "T16:00");
  }

  @Test
  void all_at_once_one_church_has_neither_cope_nor_humeral_veil() {
    assertClash("cope", "shortage");
    assertClash("humeral-veil", "shortage");
    Planned plan = Planned.on(DAY).comesTo(List.of(0, 2, 0), NONE, 0, 0);
    assertEquals(
        Set.of("cope", "humeral-veil"),
        Planning.list(plan.body(), "unmet").stream()
            .map(one -> one.get("kind"))
            .collect(Collectors.toSet()));
  }

  @Test
  void at_a_quarter_past_five_they_come_too_late_for_the_set_out() {
    moveTo("17:15");

    assertClash("cope", "unreachable");
    Planned.on(DAY).comesTo(List.of(0, 2, 0), NONE, 0, 0);
  }

  @Test
  void one_minute_before_the_first_that_is_possible_they_still_come_too_late() {
    moveTo("17:26");

    Planned.on(DAY).comesTo(List.of(0, 2, 0), NONE, 0, 0);
  }

  @Test
  void from_27_minutes_past_five_on_one_carriage_brings_both() {
    for (String start : List.of("17:27", "17:30")) {
      moveTo(start);

      Planned plan = Planned.on(DAY).isWhole(1, 12);

      Map<String, Object> journey =
          Asking.only(plan.movements().stream().filter(m -> m.get("to").equals("ol")).toList());
      assertEquals("ht", journey.get("from"));
      assertEquals(List.of("HT-CP1", "HT-HV1"), journey.get("pieces"));
      assertEquals(DAY + "T16:45:00-06:00", journey.get("ready"));
    }
  }

  private void moveTo(String start) {
    third = Asking.mass("ol", third.get("start").toString().substring(0, 16));
    Asking.change(third, Map.of("start", DAY + "T" + start));
    third = Asking.mass("ol", DAY + "T" + start);
  }

  private static void assertClash(String pieceKind, String kind) {
    Map<String, Object> clash =
        Asking.only(
            Asking.clashes(DAY, DAY).stream()
                .filter(c -> pieceKind.equals(c.get("pieceKind")))
                .filter(c -> "cluster".equals(c.get("level")))
                .toList());
    assertEquals(kind, clash.get("kind"));
    assertEquals(3, clash.get("needed"));
    assertEquals(2, clash.get("available"));
  }
}
