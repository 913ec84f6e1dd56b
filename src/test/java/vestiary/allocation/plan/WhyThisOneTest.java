package vestiary.allocation.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static vestiary.allocation.WenlowValley.HT;
import static vestiary.allocation.WenlowValley.SA;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import vestiary.allocation.WenlowValley;
import vestiary.allocation.planner.Effort;
import vestiary.allocation.planner.Planner;
import vestiary.calendar.Colour;
import vestiary.vesting.Ministers;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.VestedMass;

/** The jubilee of the invented cluster: two white sets are there, a third is brought. */
class WhyThisOneTest {

  private final Situation situation =
      Situation.of(WenlowValley.span(WenlowValley.stock(), jubilee()));
  private final Plan plan = Planner.onThisMachine().plan(situation, Effort.of(5));

  @Test
  void two_wear_what_hangs_there_and_one_what_is_carried_from_the_nearest_church() {
    Map<Ground, Long> grounds =
        plan.assignments().stream()
            .filter(worn -> worn.need().kind() == PieceKind.CHASUBLE)
            .map(worn -> WhyThisOne.in(plan, situation).reason(worn).ground())
            .collect(Collectors.groupingBy(ground -> ground, Collectors.counting()));

    assertEquals(Map.of(Ground.AT_HOME, 2L, Ground.CARRIED, 1L), grounds);
    assertEquals(HT, plan.movements().get(0).from());
  }

  @Test
  void every_other_chasuble_has_its_obstacle() {
    Provision.Worn carried =
        plan.assignments().stream()
            .filter(worn -> worn.piece().home().equals(HT))
            .filter(worn -> worn.need().kind() == PieceKind.CHASUBLE)
            .findFirst()
            .orElseThrow();

    Map<String, Obstacle> others =
        WhyThisOne.in(plan, situation).reason(carried).others().stream()
            .collect(Collectors.toMap(other -> other.piece().code(), Reason.Other::obstacle));

    assertEquals(Obstacle.AWAY, others.get("SA-W3-C"));
    assertEquals(Obstacle.WORN, others.get("SA-W1-C"));
    assertEquals(Obstacle.STAYS_HOME, others.get("HT-W4-C"));
    assertEquals(Obstacle.JOURNEY, others.get("OL-W1-C"));
    assertEquals(Obstacle.COLOUR, others.get("SA-G1-C"));
    assertFalse(others.containsValue(Obstacle.NONE));
    assertEquals(
        situation.span().pieces().stream().filter(p -> p.kind() == PieceKind.CHASUBLE).count() - 1,
        others.size());
  }

  @Test
  void a_piece_set_aside_says_so() {
    Situation held =
        situation.withHolds(
            List.of(
                new Hold("HT-W1-C", jubilee().id(), SA, situation.span().needs().get(0).window())));
    Plan again = Planner.onThisMachine().plan(held, Effort.of(5));

    assertEquals(List.of(), PlanProof.findObjections(again, held));
    assertEquals(
        Ground.HELD,
        again.assignments().stream()
            .filter(Provision.Worn::held)
            .map(worn -> WhyThisOne.in(again, held).reason(worn).ground())
            .findFirst()
            .orElseThrow());
  }

  private static VestedMass jubilee() {
    Ministers ministers = new Ministers(false, 3, 0, List.of(WenlowValley.hisOwn(Role.PRINCIPAL)));
    return WenlowValley.mass(SA, "2026-12-08T18:30", 90, Colour.WHITE, ministers);
  }
}
