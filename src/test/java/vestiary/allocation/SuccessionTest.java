package vestiary.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.allocation.Minutes.A;
import static vestiary.allocation.Minutes.B;
import static vestiary.allocation.Minutes.bothWays;
import static vestiary.allocation.Minutes.minute;
import static vestiary.allocation.Minutes.need;
import static vestiary.allocation.Minutes.nowhere;
import static vestiary.calendar.Colour.WHITE;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.Window;

class SuccessionTest {

  private static final Duration TURN = Duration.ofMinutes(5);

  /** Common practice, no source: between two Masses in one church the vestments stay out. */
  @Test
  void one_set_serves_the_eight_o_clock_and_the_half_past_nine() {
    List<Need> needs = List.of(mass(A, 480, 60, 30, 15), mass(A, 570, 60, 30, 15));

    assertTrue(new Succession(needs, nowhere(), TURN).precedes(0, 1));
  }

  @Test
  void a_turn_of_five_minutes_is_enough_and_one_of_four_is_not() {
    List<Need> touching = List.of(mass(A, 0, 60, 30, 15), mass(A, 65, 60, 30, 15));
    List<Need> tooClose = List.of(mass(A, 0, 60, 30, 15), mass(A, 64, 60, 30, 15));

    assertTrue(new Succession(touching, nowhere(), TURN).precedes(0, 1));
    assertTrue(new Succession(tooClose, nowhere(), TURN).clash(0, 1));
  }

  @Test
  void between_churches_clearance_journey_and_set_out_all_count() {
    List<Need> inTime = List.of(mass(A, 0, 60, 30, 15), mass(B, 125, 60, 30, 15));
    List<Need> late = List.of(mass(A, 0, 60, 30, 15), mass(B, 124, 60, 30, 15));

    assertTrue(new Succession(inTime, bothWays(20, A, B), TURN).precedes(0, 1));
    assertTrue(new Succession(late, bothWays(20, A, B), TURN).clash(0, 1));
  }

  @Test
  void a_long_set_out_right_after_a_short_mass_is_capped_at_that_mass_s_own() {
    Need elsewhere = mass(B, 0, 30, 0, 0);
    Need shortMass = mass(A, 60, 30, 10, 0);
    Need large = mass(A, 100, 60, 60, 0);

    Succession all = new Succession(List.of(elsewhere, shortMass, large), bothWays(15, A, B), TURN);
    Succession withoutTheShortOne =
        new Succession(List.of(elsewhere, large), bothWays(15, A, B), TURN);

    assertTrue(all.precedes(0, 1) && all.precedes(1, 2));
    assertTrue(all.precedes(0, 2));
    assertFalse(withoutTheShortOne.precedes(0, 1));
  }

  /** R. P. Dilworth's theorem (1950) is about partial orders: this must be one. */
  @Property(tries = 3000)
  void what_one_piece_can_serve_in_turn_is_a_partial_order(
      @ForAll long seed, @ForAll @IntRange(min = 0, max = 40) int turn) {
    Random random = new Random(seed);
    List<Need> needs = IntStream.range(0, 9).mapToObj(i -> randomMass(random)).toList();
    Journeys journeys = randomJourneys(random);

    Succession order = new Succession(needs, journeys, Duration.ofMinutes(turn));

    for (int a = 0; a < needs.size(); a++) {
      assertFalse(order.precedes(a, a));
      for (int b = 0; b < needs.size(); b++) {
        assertFalse(order.precedes(a, b) && order.precedes(b, a));
        for (int c = 0; c < needs.size(); c++) {
          assertTrue(!order.precedes(a, b) || !order.precedes(b, c) || order.precedes(a, c));
        }
      }
    }
  }

  @Property(tries = 500)
  void journeys_obey_the_triangle_inequality(@ForAll long seed) {
    Journeys journeys = randomJourneys(new Random(seed));

    for (int triple = 0; triple < 64; triple++) {
      ChurchId a = Minutes.church(1 + triple % 4);
      ChurchId b = Minutes.church(1 + triple / 4 % 4);
      ChurchId c = Minutes.church(1 + triple / 16);
      assertTrue(
          journeys.seconds(a, c)
              <= Math.min(Journeys.NO_WAY, journeys.seconds(a, b) + journeys.seconds(b, c)));
    }
  }

  @Test
  void a_church_is_no_journey_from_itself_even_if_nobody_knows_it() {
    assertEquals(Duration.ZERO, nowhere().find(A, A).orElseThrow());
    assertTrue(nowhere().find(A, B).isEmpty());
  }

  private static Need mass(ChurchId church, int start, int length, int setOut, int clearance) {
    Window window =
        new Window(
            minute(start - setOut),
            minute(start),
            minute(start + length),
            minute(start + length + clearance));
    return need(start, church, window, WHITE);
  }

  private static Need randomMass(Random random) {
    ChurchId church = Minutes.church(1 + random.nextInt(3));
    int length = 5 + random.nextInt(60);
    return mass(church, random.nextInt(400), length, random.nextInt(90), random.nextInt(60));
  }

  private static Journeys randomJourneys(Random random) {
    List<Journey> roads = new ArrayList<>();
    for (int pair = 0; pair < 16; pair++) {
      if (random.nextInt(4) > 0) {
        roads.add(
            new Journey(
                Minutes.church(1 + pair / 4),
                Minutes.church(1 + pair % 4),
                Duration.ofMinutes(random.nextInt(100))));
      }
    }
    return Journeys.of(roads);
  }
}
