package vestiary.allocation.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.allocation.Minutes.A;
import static vestiary.allocation.Minutes.B;
import static vestiary.allocation.Minutes.C;
import static vestiary.allocation.Minutes.minute;
import static vestiary.allocation.Minutes.need;
import static vestiary.allocation.Minutes.piece;
import static vestiary.allocation.Minutes.roads;
import static vestiary.calendar.Colour.WHITE;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import vestiary.allocation.Journey;
import vestiary.allocation.Journeys;
import vestiary.allocation.Minutes;
import vestiary.allocation.Span;
import vestiary.allocation.plan.Movement;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.PlanProof;
import vestiary.allocation.plan.Resting;
import vestiary.allocation.plan.Ride;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/** Pieces that lie elsewhere than at home, in the beginning or in the end; worked by hand. */
class LeftPiecesTest {

  private final List<Need> needs = new ArrayList<>();
  private final List<Piece> pieces = new ArrayList<>();
  private final List<Ride> rides = new ArrayList<>();
  private Map<String, ChurchId> starts = Map.of();

  @Test
  void what_was_left_where_it_is_needed_is_not_carried() {
    pieces.add(piece("w", A, WHITE));
    starts = Map.of("w", B);
    needs.add(need(1, B, 100, 150, WHITE));

    Plan plan = plan();

    assertEquals(0, plan.score().carriages());
    assertEquals(List.of(), plan.movements());
  }

  @Test
  void what_was_left_elsewhere_is_carried_from_there_and_not_from_home() {
    pieces.add(piece("w", A, WHITE));
    starts = Map.of("w", C);
    needs.add(need(1, A, 100, 150, WHITE));

    Plan plan = plan();

    assertEquals(1, plan.score().carriages());
    assertEquals(30, plan.score().minutes());
    assertEquals(C, plan.movements().get(0).from());
  }

  @Test
  void what_never_leaves_is_at_home_whatever_anybody_says() {
    Piece precious =
        new Piece("w", piece("w", A, WHITE).kind(), List.of(WHITE), A, true, "", List.of());
    pieces.add(precious);
    starts = Map.of("w", B);
    needs.add(need(1, A, 100, 150, WHITE));

    assertEquals(List.of(), plan().unmet());
  }

  @Test
  void it_goes_home_with_the_first_who_drives_there_after_its_last_mass() {
    pieces.add(piece("w", A, WHITE));
    needs.add(need(1, B, 100, 150, WHITE));
    rides.add(ride("early", B, A, 140, 150));
    rides.add(ride("first", B, A, 160, 170));
    rides.add(ride("later", B, A, 180, 190));

    Plan plan = plan();

    assertEquals(1, plan.score().carriages());
    assertEquals("first", only(plan.waysHome()).carrier());
    assertEquals(List.of(), Resting.awayFromHome(plan, situation()));
    assertEquals(2, plan.journeys().size());
  }

  @Test
  void where_nobody_drives_no_journey_is_made_and_it_is_still_to_be_taken_home() {
    pieces.add(piece("w", A, WHITE));
    needs.add(need(1, B, 100, 150, WHITE));
    rides.add(ride("elsewhere", B, C, 160, 170));

    Plan plan = plan();

    assertEquals(List.of(), plan.waysHome());
    Resting resting = only(Resting.awayFromHome(plan, situation()));
    assertEquals(B, resting.church());
    assertEquals(A, resting.home());
    assertEquals(minute(150), resting.since());
  }

  @Test
  void what_was_left_and_is_not_needed_goes_home_as_well() {
    pieces.add(piece("w", A, WHITE));
    starts = Map.of("w", B);
    rides.add(ride("first", B, A, 160, 170));

    assertEquals(1, plan().waysHome().size());
  }

  @Test
  void of_two_that_are_alike_the_one_goes_that_belongs_there() {
    pieces.add(piece("v", B, WHITE));
    pieces.add(piece("w", A, WHITE));
    starts = Map.of("w", B);
    needs.add(need(1, A, 100, 150, WHITE));
    needs.add(need(2, B, 100, 150, WHITE));

    Plan plan = plan();

    assertEquals("w", only(plan.movements()).pieces().get(0).code());
    assertEquals(List.of(), Resting.awayFromHome(plan, situation()));
  }

  @Test
  void one_brings_it_to_a_church_on_the_way_and_another_takes_it_on() {
    pieces.add(piece("w", A, WHITE));
    needs.add(need(1, C, 300, 350, WHITE));
    rides.add(ride("one", A, B, 100, 110));
    rides.add(ride("other", B, C, 200, 220));

    Plan plan = plan();

    assertEquals(0, plan.score().carriages());
    assertEquals(
        List.of("one", "other"), plan.movements().stream().map(Movement::carrier).toList());
  }

  @Test
  void nobody_takes_on_what_comes_after_he_has_left() {
    pieces.add(piece("w", A, WHITE));
    needs.add(need(1, C, 300, 350, WHITE));
    rides.add(ride("one", A, B, 195, 205));
    rides.add(ride("other", B, C, 200, 220));

    Plan plan = plan();

    assertEquals(1, plan.score().carriages());
  }

  @Test
  void it_waits_at_a_church_on_the_way_after_one_mass_and_before_the_next() {
    pieces.add(piece("w", A, WHITE));
    needs.add(need(1, A, 50, 90, WHITE));
    needs.add(need(2, C, 300, 350, WHITE));
    rides.add(ride("one", A, B, 90, 100));
    rides.add(ride("other", B, C, 280, 300));

    Plan plan = plan();

    assertEquals(0, plan.score().carriages());
    assertEquals(2, plan.assignments().size());
  }

  @Test
  void a_ride_there_and_back_for_nothing_is_not_made() {
    pieces.add(piece("v", A, WHITE));
    pieces.add(piece("w", A, WHITE));
    needs.add(need(1, A, 300, 350, WHITE));
    needs.add(need(2, B, 300, 350, WHITE));
    rides.add(ride("there", A, B, 100, 110));
    rides.add(ride("back", B, A, 150, 160));

    Plan plan = plan();

    assertEquals(1, plan.movements().size(), plan.movements().toString());
  }

  @Test
  void a_way_home_that_leads_elsewhere_is_objected_to() {
    pieces.add(piece("w", A, WHITE));
    needs.add(need(1, B, 100, 150, WHITE));
    rides.add(ride("elsewhere", B, C, 160, 170));
    Plan plan = plan();
    Movement elsewhere =
        new Movement(pieces, B, C, minute(160), minute(160), minute(170), "elsewhere", false);

    List<String> objections =
        PlanProof.findObjections(plan.withWaysHome(List.of(elsewhere)), situation());

    assertTrue(objections.toString().contains("a way home leads elsewhere"), objections::toString);
  }

  private static Ride ride(String who, ChurchId from, ChurchId to, int departs, int arrives) {
    return new Ride(who, from, to, minute(departs), minute(arrives));
  }

  private static <T> T only(List<T> found) {
    assertEquals(1, found.size(), found.toString());
    return found.get(0);
  }

  private Situation situation() {
    List<Journey> ways = new ArrayList<>(roads(10, A, B));
    ways.addAll(roads(20, B, C));
    ways.addAll(roads(30, A, C));
    return Situation.of(new Span(needs, pieces, Journeys.of(ways), Minutes.NO_TURN))
        .withRides(rides)
        .withStarts(starts);
  }

  private Plan plan() {
    Plan plan = Planner.onThisMachine().plan(situation(), Effort.of(20));
    assertEquals(List.of(), PlanProof.findObjections(plan, situation()));
    assertEquals(plan.score(), plan.bounds());
    return plan;
  }
}
