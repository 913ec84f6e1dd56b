package vestiary.allocation.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.allocation.WenlowValley.HT;
import static vestiary.allocation.WenlowValley.OL;
import static vestiary.allocation.WenlowValley.PP;
import static vestiary.allocation.WenlowValley.SA;
import static vestiary.allocation.WenlowValley.SJ;
import static vestiary.allocation.WenlowValley.at;
import static vestiary.allocation.WenlowValley.liturgy;
import static vestiary.allocation.WenlowValley.mass;
import static vestiary.allocation.WenlowValley.priestAlone;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import vestiary.allocation.ClashCheck;
import vestiary.allocation.Shortage;
import vestiary.allocation.Span;
import vestiary.allocation.WenlowValley;
import vestiary.allocation.plan.Movement;
import vestiary.allocation.plan.Ride;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.plan.Traits;
import vestiary.allocation.planner.Planner;
import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Ministers;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Step;
import vestiary.vesting.VestedMass;
import vestiary.vesting.VestingNorms;
import vestiary.vesting.VestingPolicies;

/** The clashes that are built into the invented fortnight, and the ways out worked by hand. */
class FortnightRemediesTest {

  private final Remedies remedies = new Remedies(Planner.onThisMachine());

  /**
   * The jubilee of 8 December: HT's three match, and its celebrant drives to SA after the 12:10,
   * which ends at 13:10 and is cleared by 13:25; 14 minutes on the road make it 13:39.
   */
  @Test
  void the_three_that_match_come_first_and_with_a_priest_who_drives_that_way_for_nothing() {
    VestedMass noon = mass(HT, "2026-12-08T12:10", 60, Colour.WHITE, priestAlone());
    Ride home = new Ride("Father T", HT, SA, at("2026-12-08T13:25"), at("2026-12-08T13:39"));
    Span span = WenlowValley.span(WenlowValley.stock(), noon, jubilee());
    Situation situation = withSuit(Situation.of(span)).withRides(List.of(home));

    List<Remedy> found = find(only(span, PieceKind.CHASUBLE, 3), situation);

    Change.Carry first = (Change.Carry) found.get(0).change();
    assertEquals(
        List.of("HT-W1-C", "HT-W2-C", "HT-W3-C"),
        first.pieces().stream()
            .filter(piece -> piece.kind() == PieceKind.CHASUBLE)
            .map(Piece::code)
            .toList());
    assertEquals(0, found.get(0).cost().carriages());
    Movement way = found.get(0).journeys().get(0);
    assertEquals("Father T", way.carrier());
    assertEquals(at("2026-12-08T13:39"), way.arriveBy());
  }

  @Test
  void one_set_from_coldorchard_costs_a_drive_of_22_minutes() {
    Span span = WenlowValley.span(WenlowValley.stock(), jubilee());

    Remedy fromOurLadys =
        find(only(span, PieceKind.CHASUBLE, 3), Situation.of(span)).stream()
            .filter(r -> r.change() instanceof Change.Carry carry && carry.from().equals(OL))
            .findFirst()
            .orElseThrow();

    assertEquals(1, fromOurLadys.cost().carriages());
    assertEquals(22, fromOurLadys.cost().minutes());
    assertEquals(List.of(0L, 0L, 0L), fromOurLadys.cost().steps());
  }

  @Test
  void what_is_lent_on_asking_comes_after_what_goes_freely_from_as_far() {
    Span span = WenlowValley.span(WenlowValley.stock(), jubilee());
    Map<String, Traits> onAsking =
        Stream.of("HT-W1-C", "HT-W1-S", "HT-W2-C", "HT-W2-S")
            .collect(Collectors.toMap(code -> code, code -> asked()));

    List<Remedy> found = find(only(span, PieceKind.CHASUBLE, 3), withTraits(span, onAsking));

    Change.Carry first = (Change.Carry) found.get(0).change();
    assertEquals(List.of("HT-W3-C", "HT-W3-S"), WenlowValley.codes(first.pieces()));
    assertEquals(false, found.get(0).onAsking());
  }

  @Test
  void what_is_lent_on_asking_only_is_said_to_be() {
    Span span = WenlowValley.span(WenlowValley.stock(), jubilee());
    Map<String, Traits> onAsking =
        WenlowValley.stock().stream()
            .filter(piece -> piece.home().equals(HT))
            .collect(Collectors.toMap(Piece::code, piece -> asked()));

    List<Remedy> found = find(only(span, PieceKind.CHASUBLE, 3), withTraits(span, onAsking));

    assertTrue(
        found.stream()
            .filter(r -> r.change() instanceof Change.Carry carry && carry.from().equals(HT))
            .allMatch(Remedy::onAsking));
  }

  @Test
  void what_stays_in_its_church_is_in_no_remedy() {
    Span span = WenlowValley.span(WenlowValley.stock(), confirmation());

    for (Shortage shortage : ClashCheck.find(span)) {
      for (Remedy remedy : find(shortage, Situation.of(span))) {
        if (remedy.change() instanceof Change.Carry carry) {
          assertTrue(carry.pieces().stream().noneMatch(Piece::staysHome), carry.toString());
        }
      }
    }
  }

  /** The confirmation of 5 December: five need red, HT has three, SA has the two that are short. */
  @Test
  void saint_anne_s_two_reds_serve_the_confirmation() {
    Span span = WenlowValley.span(WenlowValley.stock(), confirmation());

    List<Remedy> found = find(only(span, PieceKind.CHASUBLE, 5), Situation.of(span));

    Change.Carry first = (Change.Carry) found.get(0).change();
    assertEquals(SA, first.from());
    assertEquals(
        List.of("SA-R1-C", "SA-R1-S", "SA-R2-C", "SA-R2-S"), WenlowValley.codes(first.pieces()));
    assertEquals(14, found.get(0).cost().minutes());
  }

  /** Two deacons and one red dalmatic with its stole in the whole cluster. */
  @Test
  void a_dalmatic_is_left_out_only_if_there_is_a_stole_for_that_deacon() {
    Span poor = WenlowValley.span(WenlowValley.stock(), confirmation());
    List<Piece> stock = new ArrayList<>(WenlowValley.stock());
    stock.add(WenlowValley.piece("HT-DS6", PieceKind.DEACON_STOLE, Colour.RED, HT));
    Span span = WenlowValley.span(stock, confirmation());

    List<Change> inNeed = changes(only(poor, PieceKind.DALMATIC, 2), Situation.of(poor));
    List<Change> found = changes(only(span, PieceKind.DALMATIC, 2), Situation.of(span));

    assertEquals(List.of(), steps(inNeed));
    assertTrue(inNeed.stream().anyMatch(Change.Borrow.class::isInstance), inNeed.toString());
    assertEquals(List.of(Step.DALMATIC_LEFT_OUT), steps(found));
    assertTrue(found.stream().anyMatch(Change.Borrow.class::isInstance), found.toString());
  }

  /** The funeral of the same morning: two need white, SJ has one, since the other is mended. */
  @Test
  void the_funeral_takes_white_from_near_by_or_violet_or_a_stole_over_the_alb() {
    VestedMass funeral = funeral(Colour.WHITE);
    List<Piece> stock = new ArrayList<>(WenlowValley.stock());
    stock.add(WenlowValley.piece("SJ-S9", PieceKind.STOLE, Colour.WHITE, SJ));
    Span span = WenlowValley.span(stock, funeral);
    Change.ChooseColour violet =
        new Change.ChooseColour(
            funeral.id(),
            Colour.VIOLET,
            VestingNorms.needsOf(funeral(Colour.VIOLET), VestingPolicies.DEFAULTS),
            false);
    Leeway leeway = new Leeway(Duration.ZERO, List.of(violet), List.of(), List.of());

    List<Remedy> found =
        remedies.find(only(span, PieceKind.CHASUBLE, 2), Situation.of(span), leeway);

    List<Change> changes = found.stream().map(Remedy::change).toList();
    assertEquals(violet, changes.get(0));
    List<Change.Carry> carries =
        found.stream()
            .map(Remedy::change)
            .filter(Change.Carry.class::isInstance)
            .map(Change.Carry.class::cast)
            .toList();
    assertEquals(List.of(PP, HT), carries.stream().map(Change.Carry::from).toList().subList(0, 2));
    assertEquals(15, cost(found, PP));
    assertEquals(18, cost(found, HT));
    assertEquals(List.of(Step.STOLE_OVER_ALB), steps(changes));
  }

  /** One rose set for SJ and PP at one time: whoever takes violet mends it. */
  @Test
  void violet_at_one_of_the_two_mends_the_want_of_rose() {
    VestedMass first = mass(SJ, "2026-12-13T08:00", 60, Colour.ROSE, priestAlone());
    VestedMass second = mass(PP, "2026-12-13T08:30", 60, Colour.ROSE, priestAlone());
    Span span = WenlowValley.span(WenlowValley.stock(), first, second);

    List<Change> found = changes(only(span, PieceKind.CHASUBLE, 2), Situation.of(span));

    assertEquals(
        List.of(Step.VIOLET_FOR_ROSE, Step.VIOLET_FOR_ROSE), steps(found), found.toString());
    assertEquals(
        List.of(),
        found.stream().filter(Change.Carry.class::isInstance).toList(),
        "the one set cannot be carried to both");
  }

  /** From PP the set is at HT at 10:11, eleven minutes after set-out: 10:45 is the first start. */
  @Test
  void the_last_rose_mass_may_begin_a_quarter_of_an_hour_later() {
    VestedMass first = mass(PP, "2026-12-13T08:30", 60, Colour.ROSE, priestAlone());
    VestedMass second = mass(HT, "2026-12-13T10:30", 60, Colour.ROSE, priestAlone());
    Span span = WenlowValley.span(WenlowValley.stock(), first, second);

    List<Change> found = changes(only(span, PieceKind.CHASUBLE, 2), Situation.of(span));

    assertTrue(
        found.contains(new Change.MoveStart(second.id(), Duration.ofMinutes(15))),
        found.toString());
  }

  /** HT's cope is at OL by 16:57, set-out 30 minutes before: 17:27, so half past five. */
  @Test
  void the_first_workable_start_of_the_third_benediction_is_half_past_five() {
    Span span =
        WenlowValley.span(WenlowValley.stock(), benediction(HT), benediction(SA), benediction(OL));

    for (PieceKind kind : List.of(PieceKind.COPE, PieceKind.HUMERAL_VEIL)) {
      List<Change> found = changes(only(span, kind, 3), Situation.of(span));
      assertEquals(
          List.of(new Change.MoveStart(benediction(OL).id(), Duration.ofMinutes(90))),
          found.stream()
              .filter(Change.MoveStart.class::isInstance)
              .map(Change.MoveStart.class::cast)
              .filter(move -> move.mass().equals(benediction(OL).id()) && !move.by().isNegative())
              .toList(),
          found.toString());
    }
  }

  @Test
  void a_mass_is_not_moved_to_where_its_church_is_taken() {
    Span span =
        WenlowValley.span(WenlowValley.stock(), benediction(HT), benediction(SA), benediction(OL));
    Leeway.Taken taken =
        new Leeway.Taken(benediction(OL).id(), at("2026-12-06T17:45"), at("2026-12-06T18:30"));
    Leeway leeway = new Leeway(Duration.ofHours(2), List.of(), List.of(taken), List.of());

    List<Remedy> found = remedies.find(only(span, PieceKind.COPE, 3), Situation.of(span), leeway);

    assertTrue(
        found.stream()
            .map(Remedy::change)
            .noneMatch(new Change.MoveStart(benediction(OL).id(), Duration.ofMinutes(90))::equals));
  }

  /** OL's white dalmatic is overdue: one of HT's two comes, or a deacon goes without. */
  @Test
  void for_the_overdue_dalmatic_one_of_holy_trinity_s_comes_or_one_is_left_out() {
    Ministers ministers = new Ministers(false, 0, 2, List.of(WenlowValley.hisOwn(Role.PRINCIPAL)));
    List<Piece> stock = new ArrayList<>(WenlowValley.stock());
    stock.add(WenlowValley.piece("SA-DS9", PieceKind.DEACON_STOLE, Colour.WHITE, SA));
    Span span = WenlowValley.span(stock, mass(SA, "2026-12-08T18:30", 90, Colour.WHITE, ministers));

    List<Change> found = changes(only(span, PieceKind.DALMATIC, 2), Situation.of(span));

    Change.Carry first = (Change.Carry) found.get(0);
    assertEquals(List.of("HT-DW1-D", "HT-DW1-S"), WenlowValley.codes(first.pieces()));
    assertEquals(List.of(Step.DALMATIC_LEFT_OUT), steps(found));
    assertTrue(
        found.stream().noneMatch(Change.BringBack.class::isInstance),
        "back at its own church it would have to be carried as well");
  }

  /** Each remedy is held against the check anew: with it, the same shortage is found no more. */
  @Test
  void no_remedy_leaves_the_shortage_standing() {
    Span span =
        WenlowValley.span(WenlowValley.stock(), confirmation(), funeral(Colour.WHITE), jubilee());
    for (Shortage shortage : ClashCheck.find(span)) {
      for (Remedy remedy : find(shortage, Situation.of(span))) {
        Situation after = Amended.by(remedy.change(), Situation.of(span)).situation();
        List<List<Need>> left =
            ClashCheck.find(HeldElsewhere.of(after.span(), after.holds())).stream()
                .map(Shortage::needs)
                .toList();
        assertTrue(!left.contains(shortage.needs()), remedy.change().toString());
        assertTrue(
            remedy.after().unmet().stream().mapToLong(n -> n).sum() <= unmet(Situation.of(span)),
            remedy.change().toString());
      }
    }
  }

  private static long unmet(Situation situation) {
    return Planner.onThisMachine().coverage(situation).unmet().stream().mapToLong(n -> n).sum();
  }

  private static long cost(List<Remedy> found, ChurchId from) {
    return found.stream()
        .filter(r -> r.change() instanceof Change.Carry carry && carry.from().equals(from))
        .findFirst()
        .orElseThrow()
        .cost()
        .minutes();
  }

  private static List<Step> steps(List<Change> changes) {
    return changes.stream()
        .filter(Change.TakeStep.class::isInstance)
        .map(change -> ((Change.TakeStep) change).step())
        .toList();
  }

  private List<Change> changes(Shortage shortage, Situation situation) {
    return find(shortage, situation).stream().map(Remedy::change).toList();
  }

  private List<Remedy> find(Shortage shortage, Situation situation) {
    return remedies.find(shortage, situation, Leeway.ofHours(Duration.ofHours(2)));
  }

  private static Shortage only(Span span, PieceKind kind, int needed) {
    return ClashCheck.find(span).stream()
        .filter(shortage -> shortage.pieceKind() == kind && shortage.needed() == needed)
        .findFirst()
        .orElseThrow();
  }

  private static Traits asked() {
    return new Traits("", "", "", 0, true, 0);
  }

  private static Situation withSuit(Situation situation) {
    Map<String, Traits> suit =
        situation.span().pieces().stream()
            .filter(piece -> piece.set().matches("HT-W[123]"))
            .collect(
                Collectors.toMap(Piece::code, p -> new Traits("Trinity", "", "", 0, false, 0)));
    return withTraits(situation.span(), suit);
  }

  private static Situation withTraits(Span span, Map<String, Traits> traits) {
    return new Situation(span, List.of(), List.of(), traits, Map.of(), Map.of(), List.of());
  }

  private static VestedMass jubilee() {
    Ministers ministers = new Ministers(false, 3, 0, List.of(WenlowValley.hisOwn(Role.PRINCIPAL)));
    return mass(SA, "2026-12-08T18:30", 90, Colour.WHITE, ministers);
  }

  private static VestedMass confirmation() {
    Ministers ministers = new Ministers(true, 5, 2, List.of(WenlowValley.hisOwn(Role.PRINCIPAL)));
    return liturgy(MassKind.CONFIRMATION, HT, "2026-12-05T10:30", 105, Colour.RED, ministers);
  }

  private static VestedMass funeral(Colour colour) {
    return liturgy(
        MassKind.FUNERAL, SJ, "2026-12-05T11:00", 60, colour, WenlowValley.concelebrants(1));
  }

  private static VestedMass benediction(ChurchId church) {
    return liturgy(
        MassKind.BENEDICTION, church, "2026-12-06T16:00", 30, Colour.WHITE, priestAlone());
  }
}
