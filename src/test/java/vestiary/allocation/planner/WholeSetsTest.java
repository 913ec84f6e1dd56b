package vestiary.allocation.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static vestiary.allocation.Minutes.A;
import static vestiary.allocation.Minutes.B;
import static vestiary.allocation.Minutes.bothWays;
import static vestiary.allocation.Minutes.minute;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import vestiary.allocation.Minutes;
import vestiary.allocation.Span;
import vestiary.allocation.plan.Fit;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Occasion;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.PlanProof;
import vestiary.allocation.plan.PlanStatus;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.plan.Traits;
import vestiary.calendar.Colour;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Norm;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Step;
import vestiary.vesting.Wearer;
import vestiary.vesting.Window;

/** People wear and carry whole sets, and no more of them than they need. Worked by hand. */
class WholeSetsTest {

  private static final MassId MASS = new MassId(new UUID(4, 1));
  private static final Window WINDOW = new Window(minute(30), minute(60), minute(120), minute(135));

  private final List<Need> needs = new ArrayList<>();
  private final List<Piece> pieces = new ArrayList<>();
  private final List<Hold> holds = new ArrayList<>();
  private final Map<String, Traits> traits = new HashMap<>();
  private final Map<Wearer, Fit> fits = new HashMap<>();

  @Test
  void a_whole_set_of_another_grade_is_worn_before_a_mixed_one_of_the_right_grade() {
    priest(Role.PRINCIPAL, 1, Colour.WHITE);
    set("w1", A, Colour.WHITE, "solemn", "ferial");
    set("w2", A, Colour.WHITE, "ferial", "solemn");

    Plan plan = proven(plan());

    assertEquals(set(plan, PieceKind.CHASUBLE), set(plan, PieceKind.STOLE));
    assertEquals(4, plan.score().preferences());
  }

  @Test
  void a_set_whose_stole_is_at_the_cleaner_gives_way_to_a_whole_one() {
    priest(Role.PRINCIPAL, 1, Colour.WHITE);
    set("w1", A, Colour.WHITE, "solemn", "solemn");
    set("w2", A, Colour.WHITE, "ferial", "ferial");
    toCleaner("w1-S");

    assertEquals("w2", set(proven(plan()), PieceKind.CHASUBLE));
  }

  @Test
  void of_two_sets_alike_the_one_that_was_worn_less_is_worn() {
    priest(Role.PRINCIPAL, 1, Colour.WHITE);
    set("w1", A, Colour.WHITE, "", "");
    set("w2", A, Colour.WHITE, "", "");
    assertEquals("w1", set(proven(plan()), PieceKind.CHASUBLE));

    traits.put("w1-C", new Traits("", "", "", 0, false, 2));
    traits.put("w2-C", new Traits("", "", "", 0, false, 1));

    assertEquals("w2", set(proven(plan()), PieceKind.CHASUBLE));
  }

  @Test
  void where_no_whole_set_is_left_a_mixed_one_is_worn() {
    priest(Role.PRINCIPAL, 1, Colour.WHITE);
    set("w1", A, Colour.WHITE, "solemn", "solemn");
    set("w2", A, Colour.WHITE, "solemn", "solemn");
    toCleaner("w1-S");
    toCleaner("w2-C");

    Plan plan = proven(plan());

    assertEquals(List.of(0L, 0L, 0L), plan.score().unmet());
    assertNotEquals(set(plan, PieceKind.CHASUBLE), set(plan, PieceKind.STOLE));
    assertEquals(100, plan.score().preferences());
  }

  @Test
  void whoever_is_too_tall_for_the_one_set_leaves_it_whole_to_the_other() {
    priest(Role.PRINCIPAL, 1, Colour.WHITE);
    priest(Role.CONCELEBRANT, 1, Colour.WHITE);
    set("w1", A, Colour.WHITE, "", "");
    set("w2", A, Colour.WHITE, "", "");
    traits.put("w1-C", length(115));
    traits.put("w2-C", length(135));
    fits.put(new Wearer(MASS, Role.CONCELEBRANT, 1), new Fit(130, 140, true));

    Plan plan = proven(plan());

    assertEquals(0, plan.score().preferences());
    assertEquals("w1", set(plan, PieceKind.STOLE));
  }

  @Test
  void where_one_set_is_short_one_set_rides() {
    priest(Role.PRINCIPAL, 1, Colour.WHITE);
    priest(Role.CONCELEBRANT, 1, Colour.WHITE);
    set("a1", A, Colour.WHITE, "", "");
    set("b1", B, Colour.WHITE, "", "");
    set("b2", B, Colour.WHITE, "", "");

    Plan plan = proven(plan());

    assertEquals(1, plan.movements().size());
    assertEquals(2, plan.movements().get(0).pieces().size());
    assertEquals(2, plan.score().preferences());
  }

  @Test
  void two_sets_ride_where_both_are_then_of_one_suit() {
    priest(Role.PRINCIPAL, 1, Colour.WHITE);
    priest(Role.CONCELEBRANT, 1, Colour.WHITE);
    set("a1", A, Colour.WHITE, "", "");
    set("b1", B, Colour.WHITE, "", "");
    set("b2", B, Colour.WHITE, "", "");
    traits.put("b1-C", suit());
    traits.put("b2-C", suit());

    Plan plan = proven(plan());

    assertEquals(1, plan.score().carriages());
    assertEquals(4, plan.movements().get(0).pieces().size());
  }

  @Test
  void a_chasuble_that_is_set_aside_gets_the_stole_of_its_set() {
    priest(Role.PRINCIPAL, 1, Colour.WHITE);
    set("w1", A, Colour.WHITE, "", "solemn");
    set("w2", A, Colour.WHITE, "", "ferial");
    holds.add(new Hold("w2-C", MASS, A, WINDOW));

    Plan plan = proven(plan());

    assertEquals("w2", set(plan, PieceKind.STOLE));
    assertEquals(4, plan.score().preferences());
  }

  /** What is held was chosen by nobody here, and is liked no better for it. */
  @Test
  void held_pieces_count_among_the_preferences_like_all_others() {
    priest(Role.PRINCIPAL, 1, Colour.WHITE);
    set("w1", A, Colour.WHITE, "ferial", "ferial");
    holds.add(new Hold("w1-C", MASS, A, WINDOW));
    holds.add(new Hold("w1-S", MASS, A, WINDOW));

    assertEquals(8, proven(plan()).score().preferences());
  }

  /** GIRM 346 f: violet where there is no rose. */
  @Test
  void one_person_takes_one_step_though_only_his_chasuble_is_held() {
    priest(Role.PRINCIPAL, 1, Colour.ROSE, Step.VIOLET_FOR_ROSE);
    set("v1", A, Colour.VIOLET, "", "");
    holds.add(new Hold("v1-C", MASS, A, WINDOW));

    assertEquals(List.of(0L, 0L, 1L), proven(plan()).score().steps());
  }

  /** RS 127: gold and silver never go in the place of violet, white of necessity or not. */
  @Test
  void gold_is_not_worn_for_the_white_that_stands_for_violet() {
    Wearer wearer = new Wearer(MASS, Role.CONCELEBRANT, 1);
    need(wearer, PieceKind.CHASUBLE, Colour.VIOLET, Step.WHITE_CHASUBLE);
    set("g1", A, Colour.GOLD, "", "");

    assertEquals(List.of(0L, 0L, 1L), proven(plan()).score().unmet());
  }

  private void priest(Role role, int number, Colour colour, Step... ladder) {
    Wearer wearer = new Wearer(MASS, role, number);
    need(wearer, PieceKind.CHASUBLE, colour, ladder);
    need(wearer, PieceKind.STOLE, colour, ladder);
  }

  private void need(Wearer wearer, PieceKind kind, Colour colour, Step... ladder) {
    Norm norm = new Norm(wearer.role() == Role.PRINCIPAL, List.of(ladder), "invented");
    needs.add(new Need(wearer, A, WINDOW, kind, colour, false, norm));
  }

  private void set(String code, ChurchId home, Colour colour, String grade, String ofStole) {
    List<Colour> colours = List.of(colour);
    pieces.add(new Piece(code + "-C", PieceKind.CHASUBLE, colours, home, false, code, List.of()));
    pieces.add(new Piece(code + "-S", PieceKind.STOLE, colours, home, false, code, List.of()));
    traits.put(code + "-C", new Traits("", grade, "", 0, false, 0));
    traits.put(code + "-S", new Traits("", ofStole, "", 0, false, 0));
  }

  private void toCleaner(String code) {
    pieces.replaceAll(
        piece ->
            piece.code().equals(code)
                ? new Piece(
                    code,
                    piece.kind(),
                    piece.colours(),
                    piece.home(),
                    false,
                    piece.set(),
                    List.of(new Away(minute(0), minute(500), "at the cleaner")))
                : piece);
  }

  private static Traits length(int centimetres) {
    return new Traits("", "", "", centimetres, false, 0);
  }

  private static Traits suit() {
    return new Traits("jubilee", "", "", 0, false, 0);
  }

  private Situation situation() {
    Span span = new Span(needs, pieces, bothWays(20, A, B), Minutes.NO_TURN);
    Map<MassId, Occasion> occasions = Map.of(MASS, new Occasion("solemn", ""));
    return new Situation(span, holds, List.of(), traits, occasions, fits, List.of());
  }

  private Plan plan() {
    return Planner.onThisMachine().plan(situation(), Effort.of(5));
  }

  private Plan proven(Plan plan) {
    assertEquals(List.of(), PlanProof.findObjections(plan, situation()));
    assertEquals(PlanStatus.PROVEN, plan.status());
    return plan;
  }

  private static String set(Plan plan, PieceKind kind) {
    return plan.assignments().stream()
        .filter(one -> one.need().kind() == kind && one.need().role() == Role.PRINCIPAL)
        .map(one -> one.piece().set())
        .findFirst()
        .orElseThrow();
  }
}
