package vestiary.allocation.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.allocation.WenlowValley.HT;
import static vestiary.allocation.WenlowValley.OL;
import static vestiary.allocation.WenlowValley.SA;
import static vestiary.allocation.WenlowValley.SJ;
import static vestiary.allocation.WenlowValley.at;
import static vestiary.calendar.Colour.RED;
import static vestiary.calendar.Colour.VIOLET;
import static vestiary.calendar.Colour.WHITE;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.allocation.WenlowValley;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.PlanProof;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.Away;
import vestiary.vesting.Piece;
import vestiary.vesting.VestedMass;

/** A change touches its own day and leaves the others as they are. */
class ReplanTest {

  private static final VestedMass SATURDAY =
      WenlowValley.mass(HT, "2026-12-05T10:30", 105, RED, WenlowValley.concelebrants(4));
  private static final VestedMass SUNDAY =
      WenlowValley.mass(SJ, "2026-12-06T08:00", 60, VIOLET, WenlowValley.priestAlone());
  private static final VestedMass TUESDAY =
      WenlowValley.mass(SA, "2026-12-08T18:30", 90, WHITE, WenlowValley.concelebrants(2));

  private final Planner planner = Planner.onThisMachine();
  private final Situation before = situation(WenlowValley.stock(), SATURDAY, SUNDAY, TUESDAY);
  private final Plan last = planner.plan(before, Effort.of(10));

  @Test
  void a_mass_that_is_added_leaves_the_other_days_as_they_are() {
    VestedMass funeral =
        WenlowValley.mass(OL, "2026-12-08T18:00", 60, WHITE, WenlowValley.concelebrants(1));
    Situation now = situation(WenlowValley.stock(), SATURDAY, SUNDAY, TUESDAY, funeral);

    Plan plan = planner.replan(before, last, now, Effort.of(10));

    assertEquals(List.of(), PlanProof.findObjections(plan, now.withLast(last.provisions())));
    assertEquals(worn(last, SATURDAY), worn(plan, SATURDAY));
    assertEquals(worn(last, SUNDAY), worn(plan, SUNDAY));
    assertEquals(planner.plan(now, Effort.of(10)).score().unmet(), plan.score().unmet());
    assertEquals(4, worn(plan, funeral).size());
  }

  @Test
  void a_piece_that_is_damaged_is_replaced_on_its_day_alone() {
    String damaged = worn(last, TUESDAY).get(0).split(" ")[1];
    List<Piece> stock =
        WenlowValley.stock().stream().map(piece -> inCareIf(piece, damaged)).toList();
    Situation now = situation(stock, SATURDAY, SUNDAY, TUESDAY);

    Plan plan = planner.replan(before, last, now, Effort.of(10));

    assertEquals(List.of(), PlanProof.findObjections(plan, now.withLast(last.provisions())));
    assertEquals(worn(last, SATURDAY), worn(plan, SATURDAY));
    assertFalse(worn(plan, TUESDAY).toString().contains(damaged));
    assertTrue(plan.score().changes() <= 2);
  }

  @Test
  void if_nothing_changes_nothing_is_changed() {
    Plan plan = planner.replan(before, last, before, Effort.of(10));

    assertEquals(last.provisions(), plan.provisions());
    assertEquals(last.movements(), plan.movements());
  }

  private static List<String> worn(Plan plan, VestedMass mass) {
    return plan.assignments().stream()
        .filter(one -> one.need().mass().equals(mass.id()))
        .map(
            one ->
                one.need().wearer().role() + "" + one.need().ordinal() + " " + one.piece().code())
        .toList();
  }

  private static Piece inCareIf(Piece piece, String code) {
    List<Away> away = new ArrayList<>(piece.away());
    if (piece.code().equals(code)) {
      away.add(new Away(at("2026-12-07T09:00"), at("2026-12-20T09:00"), "torn"));
    }
    return new Piece(
        piece.code(),
        piece.kind(),
        piece.colours(),
        piece.home(),
        piece.staysHome(),
        piece.set(),
        away);
  }

  private static Situation situation(List<Piece> stock, VestedMass... masses) {
    return Situation.of(WenlowValley.span(stock, masses));
  }
}
