package vestiary.allocation.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.allocation.WenlowValley.HT;
import static vestiary.allocation.WenlowValley.SA;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import vestiary.allocation.WenlowValley;
import vestiary.allocation.planner.Effort;
import vestiary.allocation.planner.Planner;
import vestiary.calendar.Colour;
import vestiary.vesting.MassId;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.VestedMass;

/** A plan that has been spoilt in one way is objected to in that way. */
class PlanProofTest {

  private static final VestedMass JUBILEE =
      WenlowValley.mass(SA, "2026-12-08T18:30", 90, Colour.WHITE, WenlowValley.concelebrants(2));
  private static final VestedMass EVENING =
      WenlowValley.mass(HT, "2026-12-08T18:00", 60, Colour.WHITE, WenlowValley.priestAlone());

  private final Situation situation =
      Situation.of(WenlowValley.span(WenlowValley.stock(), JUBILEE, EVENING));
  private final Plan plan = Planner.onThisMachine().plan(situation, Effort.of(5));

  @Test
  void the_plan_itself_holds() {
    assertEquals(List.of(), PlanProof.findObjections(plan, situation));
  }

  @Test
  void one_piece_for_two_at_one_mass_is_found() {
    Provision.Worn first = chasuble(JUBILEE, 0);
    Provision.Worn second = chasuble(JUBILEE, 1);

    assertObjection("worn twice", with(second, first.piece()));
  }

  @Test
  void one_piece_at_two_masses_at_one_time_is_found() {
    assertObjection("in two places", with(chasuble(EVENING, 0), chasuble(JUBILEE, 0).piece()));
  }

  @Test
  void a_colour_that_is_not_lawful_is_found() {
    assertObjection("is not lawful", with(chasuble(EVENING, 0), piece("HT-G1-C")));
  }

  @Test
  void a_piece_at_the_cleaner_is_found() {
    assertObjection("two places", with(chasuble(JUBILEE, 0), piece("SA-W3-C")));
  }

  @Test
  void a_journey_that_is_not_told_is_found() {
    assertObjection(
        "is not where",
        new Plan(plan.provisions(), List.of(), plan.score(), plan.bounds(), List.of()));
  }

  @Test
  void a_journey_that_is_too_quick_is_found() {
    Movement one = plan.movements().get(0);
    Movement quick =
        new Movement(
            one.pieces(),
            one.from(),
            one.to(),
            one.ready(),
            one.arriveBy(),
            one.arriveBy(),
            "",
            false);

    assertObjection(
        "cannot be made",
        new Plan(plan.provisions(), List.of(quick), plan.score(), plan.bounds(), List.of()));
  }

  @Test
  void a_need_that_is_passed_over_is_found() {
    List<Provision> fewer = plan.provisions().subList(1, plan.provisions().size());

    assertObjection(
        "not each need", new Plan(fewer, plan.movements(), plan.score(), plan.bounds(), List.of()));
  }

  @Test
  void a_piece_that_is_set_aside_for_another_mass_is_found() {
    Provision.Worn worn = chasuble(JUBILEE, 0);
    Hold hold = new Hold(worn.piece().code(), new MassId(new UUID(7, 7)), HT, worn.need().window());

    assertTrue(
        PlanProof.findObjections(plan, situation.withHolds(List.of(hold))).stream()
            .anyMatch(objection -> objection.contains(worn.piece().code())));
  }

  @Test
  void numbers_that_are_not_those_of_the_plan_are_found() {
    Score score = plan.score();
    Score better =
        new Score(score.unmet(), score.steps(), 0, 0, score.preferences(), score.changes());

    assertObjection(
        "miscounted",
        new Plan(plan.provisions(), plan.movements(), better, plan.bounds(), List.of()));
  }

  private void assertObjection(String words, Plan spoilt) {
    List<String> objections = PlanProof.findObjections(spoilt, situation);
    assertTrue(objections.stream().anyMatch(o -> o.contains(words)), objections::toString);
  }

  private Plan with(Provision.Worn instead, Piece piece) {
    List<Provision> provisions = new ArrayList<>(plan.provisions());
    provisions.set(
        provisions.indexOf(instead), new Provision.Worn(instead.need(), piece, 0, false));
    return new Plan(provisions, plan.movements(), plan.score(), plan.bounds(), List.of());
  }

  private Provision.Worn chasuble(VestedMass mass, int place) {
    return plan.assignments().stream()
        .filter(worn -> worn.need().mass().equals(mass.id()))
        .filter(worn -> worn.need().kind() == PieceKind.CHASUBLE)
        .skip(place)
        .findFirst()
        .orElseThrow();
  }

  private static Piece piece(String code) {
    return WenlowValley.stock().stream()
        .filter(piece -> piece.code().equals(code))
        .findFirst()
        .orElseThrow();
  }
}
