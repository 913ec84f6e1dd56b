package vestiary.allocation.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.allocation.WenlowValley.HT;
import static vestiary.allocation.WenlowValley.OL;
import static vestiary.allocation.WenlowValley.PP;
import static vestiary.allocation.WenlowValley.SA;
import static vestiary.allocation.WenlowValley.SJ;
import static vestiary.allocation.WenlowValley.SM;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.allocation.ClashCheck;
import vestiary.allocation.Shortage;
import vestiary.allocation.Span;
import vestiary.allocation.WenlowValley;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.planner.Planner;
import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Ministers;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Step;
import vestiary.vesting.VestedMass;
import vestiary.vesting.Window;

/** What mends the clashes of the invented cluster; all results worked by hand. */
class RemediesTest {

  private final Remedies remedies = new Remedies(Planner.onThisMachine());

  @Test
  void a_third_white_set_comes_from_each_of_five_churches_the_nearest_first() {
    List<Remedy> found = find(WenlowValley.span(WenlowValley.stock(), jubilee()));

    List<Change.Carry> carries =
        found.stream()
            .map(Remedy::change)
            .filter(Change.Carry.class::isInstance)
            .map(Change.Carry.class::cast)
            .toList();
    assertEquals(List.of(HT, SM, SJ, OL, PP), carries.stream().map(Change.Carry::from).toList());
    assertEquals(carries.get(0), found.get(0).change());
    assertEquals(14, found.get(0).after().minutes());
    assertEquals(List.of("HT-W1-C", "HT-W1-S"), WenlowValley.codes(carries.get(0).pieces()));
  }

  @Test
  void one_concelebrant_in_his_stole_needs_no_journey() {
    List<Remedy> found = find(WenlowValley.span(stolesEverywhere(), jubilee()));

    Remedy step =
        found.stream().filter(r -> r.change() instanceof Change.TakeStep).findFirst().orElseThrow();
    assertEquals(Step.STOLE_OVER_ALB, ((Change.TakeStep) step.change()).step());
    assertEquals(List.of(0L, 0L, 1L), step.after().steps());
    assertEquals(0, step.after().carriages());
  }

  @Test
  void a_set_back_from_the_cleaner_and_a_loan_mend_it_too() {
    List<Change> changes =
        find(WenlowValley.span(WenlowValley.stock(), jubilee())).stream()
            .map(Remedy::change)
            .toList();

    assertTrue(
        changes.stream()
            .anyMatch(
                change ->
                    change instanceof Change.BringBack back
                        && WenlowValley.codes(back.pieces())
                            .equals(List.of("SA-W3-C", "SA-W3-S"))));
    assertTrue(changes.stream().anyMatch(Change.BringOwn.class::isInstance));
    assertTrue(changes.stream().anyMatch(Change.Borrow.class::isInstance));
    assertTrue(changes.stream().noneMatch(Change.Release.class::isInstance));
  }

  /** The cope of HT is free at 16:45 and at OL at 16:57, so set-out at 17:00 will do. */
  @Test
  void the_third_benediction_may_begin_at_half_past_five() {
    Span span =
        WenlowValley.span(WenlowValley.stock(), benediction(HT), benediction(SA), benediction(OL));
    Shortage copes =
        ClashCheck.find(span).stream()
            .filter(shortage -> shortage.pieceKind() == PieceKind.COPE)
            .filter(shortage -> shortage.missing() == 1 && shortage.needed() == 3)
            .findFirst()
            .orElseThrow();

    List<Remedy> found =
        remedies.find(copes, Situation.of(span), Leeway.ofHours(Duration.ofHours(2)));

    assertTrue(
        found.stream()
            .anyMatch(
                remedy ->
                    remedy
                            .change()
                            .equals(
                                new Change.MoveStart(benediction(OL).id(), Duration.ofMinutes(90)))
                        && remedy.after().unmet().equals(List.of(0L, 0L, 0L))));
  }

  /** Two sets, two concelebrants, and one of the sets is set aside for another church. */
  @Test
  void a_set_that_is_held_for_another_church_is_offered_for_release() {
    List<Piece> two =
        WenlowValley.stock().stream().filter(piece -> piece.set().startsWith("SA-W")).toList();
    Span span = WenlowValley.span(two, jubileeWith(2));
    Window window = span.needs().get(0).window();
    MassId elsewhere = WenlowValley.mass(HT, "2026-12-08T18:30", 60, Colour.WHITE, alone()).id();
    List<Hold> holds =
        List.of("SA-W2-C", "SA-W2-S").stream()
            .map(code -> new Hold(code, elsewhere, HT, window))
            .toList();
    Situation situation = Situation.of(span).withHolds(holds);
    Shortage shortage = ClashCheck.find(HeldElsewhere.of(span, holds)).get(0);

    List<Remedy> found = remedies.find(shortage, situation, Leeway.ofHours(Duration.ZERO));

    assertEquals(1, shortage.available());
    assertTrue(
        found.stream().anyMatch(remedy -> remedy.change().equals(new Change.Release(holds))));
  }

  private List<Remedy> find(Span span) {
    Shortage shortage = ClashCheck.find(span).get(0);
    return remedies.find(shortage, Situation.of(span), Leeway.ofHours(Duration.ofHours(1)));
  }

  private static List<Piece> stolesEverywhere() {
    List<Piece> pieces = new ArrayList<>(WenlowValley.stock());
    pieces.add(WenlowValley.piece("SA-S9", PieceKind.STOLE, Colour.WHITE, SA));
    return pieces;
  }

  private static Ministers alone() {
    return WenlowValley.priestAlone();
  }

  private static VestedMass jubilee() {
    return jubileeWith(3);
  }

  private static VestedMass jubileeWith(int concelebrants) {
    Ministers ministers =
        new Ministers(false, concelebrants, 0, List.of(WenlowValley.hisOwn(Role.PRINCIPAL)));
    return WenlowValley.mass(SA, "2026-12-08T18:30", 90, Colour.WHITE, ministers);
  }

  private static VestedMass benediction(ChurchId church) {
    return WenlowValley.liturgy(
        MassKind.BENEDICTION, church, "2026-12-06T16:00", 30, Colour.WHITE, alone());
  }
}
