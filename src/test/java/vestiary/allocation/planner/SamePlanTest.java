package vestiary.allocation.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import vestiary.allocation.Span;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/** The same situation gets the same plan, in whatever order it is given. */
class SamePlanTest {

  private final Planner planner = Planner.onThisMachine();

  @Test
  void the_order_in_which_needs_and_pieces_are_given_makes_no_difference() {
    for (int seed = 0; seed < 100; seed++) {
      Situation situation = SmallWorld.of(seed, 3);
      Plan plan = planner.plan(situation, Effort.of(5));
      Plan again = planner.plan(shuffled(situation, seed), Effort.of(5));

      assertEquals(plan, again, "case " + seed);
    }
  }

  private static Situation shuffled(Situation situation, int seed) {
    Span span = situation.span();
    List<Need> needs = new ArrayList<>(span.needs());
    List<Piece> pieces = new ArrayList<>(span.pieces());
    Collections.shuffle(needs, new Random(seed));
    Collections.shuffle(pieces, new Random(seed));
    return situation.with(new Span(needs, pieces, span.journeys(), span.policies()));
  }
}
