package vestiary.allocation.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.allocation.Minutes.A;
import static vestiary.allocation.Minutes.B;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import vestiary.allocation.Minutes;
import vestiary.allocation.Span;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.PlanProof;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Situation;
import vestiary.calendar.Colour;
import vestiary.vesting.Away;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/** What a plan changes of the one before it, name by name. */
class LeastChangeTest {

  private static final Instant ALWAYS = SmallWorld.minute(-100_000);
  private static final Instant NEVER = SmallWorld.minute(100_000);

  private final Planner planner = Planner.onThisMachine();

  @Test
  void planning_again_after_nothing_has_changed_gives_the_very_same_plan() {
    for (int seed = 0; seed < 400; seed++) {
      Situation situation = SmallWorld.of(seed, 2 + seed % 2);
      Plan plan = planner.plan(situation, Effort.of(5));
      Situation after = situation.withLast(plan.provisions());
      Plan again = planner.plan(after, Effort.of(5));

      assertEquals(plan.provisions(), again.provisions(), "case " + seed);
      assertEquals(0, again.score().changes(), "case " + seed);
      assertEquals(plan.status(), again.status(), "case " + seed);
      assertEquals(List.of(), PlanProof.findObjections(again, after), "case " + seed);
    }
  }

  /** By every assignment there is, as many names change as must. */
  @Test
  void after_a_piece_is_torn_only_what_must_changes() {
    int more = 0;
    for (int seed = 0; seed < 400; seed++) {
      Situation situation = SmallWorld.of(seed, 2);
      Plan plan = planner.plan(situation, Effort.of(5));
      Optional<String> torn = worn(plan, situation, seed);
      if (torn.isPresent()) {
        Situation after = without(torn.get(), situation).withLast(plan.provisions());
        Plan again = planner.plan(after, Effort.of(5));
        List<Provision.Worn> held =
            again.assignments().stream().filter(Provision.Worn::held).toList();
        long[] best = new EveryAssignment(after, held, false).best();

        assertEquals(List.of(), PlanProof.findObjections(again, after), "case " + seed);
        if (best[6] == 0) {
          assertEquals(best[10], again.score().changes(), "case " + seed);
          assertTrue(again.bounds().changes() <= best[10], "case " + seed);
          more += best[10] > 1 ? 1 : 0;
        }
      }
    }
    assertTrue(more > 20, "more than one change in " + more);
  }

  /**
   * Two sets changed places overnight in the last plan, and a third that was fetched need not be:
   * worked by hand, only what the third served changes.
   */
  @Test
  void sets_that_went_on_in_one_anothers_stead_do_so_again() {
    List<Need> needs = new ArrayList<>();
    for (int mass = 1; mass <= 3; mass++) {
      needs.add(Minutes.need(mass, A, 600, 660, Colour.WHITE));
      needs.add(Minutes.need(10 + mass, A, 2040, 2100, Colour.WHITE));
    }
    Piece one = Minutes.piece("w1", A, Colour.WHITE);
    Piece other = Minutes.piece("w2", A, Colour.WHITE);
    Piece fetched = Minutes.piece("w3", B, Colour.WHITE);
    Piece idle = Minutes.piece("w4", A, Colour.WHITE);
    List<Piece> worn = List.of(one, other, other, one, fetched, fetched);
    List<Provision> last = new ArrayList<>();
    for (int at = 0; at < needs.size(); at++) {
      last.add(new Provision.Worn(needs.get(at), worn.get(at), 0, false));
    }
    List<Piece> pieces = List.of(one, other, fetched, idle);
    Span span = new Span(needs, pieces, Minutes.bothWays(20, A, B), Minutes.NO_TURN);

    Plan plan = planner.plan(Situation.of(span).withLast(last), Effort.of(5));

    assertEquals(0, plan.score().carriages());
    assertEquals(2, plan.score().changes());
  }

  private static Optional<String> worn(Plan plan, Situation situation, int seed) {
    List<String> held = situation.holds().stream().map(Hold::piece).toList();
    List<String> codes =
        plan.assignments().stream()
            .map(one -> one.piece().code())
            .filter(code -> !held.contains(code))
            .distinct()
            .toList();
    return codes.isEmpty() ? Optional.empty() : Optional.of(codes.get(seed % codes.size()));
  }

  private static Situation without(String code, Situation situation) {
    Span span = situation.span();
    List<Piece> pieces =
        span.pieces().stream()
            .map(piece -> piece.code().equals(code) ? torn(piece) : piece)
            .toList();
    return situation.with(new Span(span.needs(), pieces, span.journeys(), span.policies()));
  }

  private static Piece torn(Piece piece) {
    return new Piece(
        piece.code(),
        piece.kind(),
        piece.colours(),
        piece.home(),
        piece.staysHome(),
        piece.set(),
        List.of(new Away(ALWAYS, NEVER, "torn")),
        piece.make());
  }
}
