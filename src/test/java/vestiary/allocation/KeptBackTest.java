package vestiary.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.allocation.Minutes.A;
import static vestiary.allocation.Minutes.B;
import static vestiary.allocation.Minutes.need;
import static vestiary.allocation.Minutes.piece;
import static vestiary.calendar.Colour.WHITE;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.PlanProof;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.planner.Effort;
import vestiary.allocation.planner.Planner;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/** An owner who says no for one Mass says nothing of the others. */
class KeptBackTest {

  private final Need early = need(1, A, 100, 160, WHITE);
  private final Need late = need(2, A, 300, 360, WHITE);

  @Test
  void what_is_not_given_for_a_mass_is_short_there_and_told() {
    Piece kept = keptFrom(early, piece("w", B, WHITE));

    List<Shortage> found = ClashCheck.find(span(kept));

    Shortage shortage =
        found.stream().filter(one -> one.level() == Level.CLUSTER).findFirst().orElseThrow();
    assertEquals(List.of(early), shortage.unserved());
    assertEquals(
        List.of(new NotServing(kept, Hindrance.KEPT_BACK, List.of())), shortage.notServing());
    assertEquals(List.of(), ShortageProof.findObjections(shortage, span(kept)));
  }

  @Test
  void a_plan_goes_round_it_and_still_uses_it_for_the_other_mass() {
    Situation situation = Situation.of(span(keptFrom(early, piece("w", B, WHITE))));

    Plan plan = Planner.onThisMachine().plan(situation, Effort.of(5));

    assertEquals(List.of(late), plan.assignments().stream().map(Provision::need).toList());
    assertEquals(List.of(), PlanProof.findObjections(plan, situation));
  }

  @Test
  void a_plan_that_goes_against_a_no_is_objected_to() {
    Piece kept = keptFrom(early, piece("w", B, WHITE));
    Plan plan =
        Planner.onThisMachine().plan(Situation.of(span(piece("w", B, WHITE))), Effort.of(5));
    Plan against =
        new Plan(
            plan.provisions().stream().<Provision>map(one -> worn(one.need(), kept)).toList(),
            plan.movements(),
            plan.score(),
            plan.bounds(),
            List.of());

    List<String> objections = PlanProof.findObjections(against, Situation.of(span(kept)));

    assertTrue(
        objections.contains("w is not given for that Mass by its owner"), objections.toString());
  }

  private static Provision worn(Need need, Piece piece) {
    return new Provision.Worn(need, piece, 0, false);
  }

  private Span span(Piece piece) {
    return new Span(
        List.of(early, late), List.of(piece), Minutes.bothWays(30, A, B), Minutes.NO_TURN);
  }

  private static Piece keptFrom(Need need, Piece piece) {
    return new Piece(
        piece.code(),
        piece.kind(),
        piece.colours(),
        piece.home(),
        piece.staysHome(),
        piece.set(),
        piece.away(),
        piece.make(),
        Set.of(need.mass()));
  }
}
