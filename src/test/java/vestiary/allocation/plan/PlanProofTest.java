package vestiary.allocation.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.allocation.WenlowValley.HT;
import static vestiary.allocation.WenlowValley.SA;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

  @ParameterizedTest
  @CsvSource({
    "0, the unmet of principal celebrants",
    "1, the unmet that must be met",
    "2, the others unmet",
    "3, the third steps",
    "4, the second steps",
    "5, the first steps",
    "6, the carriages",
    "7, the minutes",
    "8, the preferences",
    "9, the changes"
  })
  void a_number_that_is_not_that_of_the_plan_is_found(int place, String words) {
    List<Long> numbers = new ArrayList<>(plan.score().unmet());
    numbers.addAll(plan.score().steps());
    numbers.add(plan.score().carriages());
    numbers.add(plan.score().minutes());
    numbers.add(plan.score().preferences());
    numbers.add(plan.score().changes());
    numbers.set(place, numbers.get(place) + 1);
    Score more =
        new Score(
            numbers.subList(0, 3),
            numbers.subList(3, 6),
            numbers.get(6),
            numbers.get(7),
            numbers.get(8),
            numbers.get(9));

    List<String> objections =
        PlanProof.findObjections(
            new Plan(plan.provisions(), plan.movements(), more, plan.bounds(), List.of()),
            situation);

    assertEquals(1, objections.size(), objections::toString);
    assertTrue(objections.get(0).startsWith(words + " are miscounted"), objections::toString);
  }

  @Test
  void stoles_that_are_exchanged_are_found_in_the_preferences() {
    Provision.Worn one = stole(JUBILEE, 0);
    Provision.Worn other = stole(JUBILEE, 1);

    assertObjection("the preferences are miscounted", exchanged(one, other));
  }

  @Test
  void names_that_are_exchanged_are_found_in_the_changes() {
    Situation after = situation.withLast(plan.provisions());
    Provision.Worn one = stole(JUBILEE, 0);
    Provision.Worn other = stole(JUBILEE, 1);

    List<String> objections = PlanProof.findObjections(exchanged(one, other), after);

    assertTrue(objections.contains("the changes are miscounted: 2, not 0"), objections::toString);
  }

  @Test
  void a_set_that_rides_along_for_nothing_is_found() {
    Movement one = plan.movements().get(0);
    List<Piece> more = new ArrayList<>(one.pieces());
    more.add(piece("HT-G1-C"));
    Movement fuller =
        new Movement(
            more, one.from(), one.to(), one.ready(), one.leaveBy(), one.arriveBy(), "", false);

    assertObjection(
        "HT-G1-C is carried for nothing",
        new Plan(plan.provisions(), List.of(fuller), plan.score(), plan.bounds(), List.of()));
  }

  @Test
  void what_sacristans_have_set_aside_in_two_places_is_told_and_no_objection() {
    Provision.Worn worn = chasuble(JUBILEE, 0);
    String code = worn.piece().code();
    Hold one = new Hold(code, new MassId(new UUID(7, 7)), HT, worn.need().window());
    Hold other = new Hold(code, new MassId(new UUID(7, 8)), SA, worn.need().window());
    Situation held = situation.withHolds(List.of(one, other));

    Plan anyway = Planner.onThisMachine().plan(held, Effort.of(5));

    assertEquals(1, anyway.contradictions().size());
    assertEquals(List.of(), PlanProof.findObjections(anyway, held));
  }

  private Plan exchanged(Provision.Worn one, Provision.Worn other) {
    List<Provision> provisions = new ArrayList<>(plan.provisions());
    provisions.set(
        provisions.indexOf(one), new Provision.Worn(one.need(), other.piece(), 0, false));
    provisions.set(
        provisions.indexOf(other), new Provision.Worn(other.need(), one.piece(), 0, false));
    return new Plan(provisions, plan.movements(), plan.score(), plan.bounds(), List.of());
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
    return worn(mass, PieceKind.CHASUBLE, place);
  }

  private Provision.Worn stole(VestedMass mass, int place) {
    return worn(mass, PieceKind.STOLE, place);
  }

  private Provision.Worn worn(VestedMass mass, PieceKind kind, int place) {
    return plan.assignments().stream()
        .filter(worn -> worn.need().mass().equals(mass.id()))
        .filter(worn -> worn.need().kind() == kind)
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
