package vestiary.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.allocation.Minutes.A;
import static vestiary.allocation.Minutes.B;
import static vestiary.allocation.Minutes.C;
import static vestiary.allocation.Minutes.bothWays;
import static vestiary.allocation.Minutes.need;
import static vestiary.calendar.Colour.WHITE;

import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.vesting.Need;

class NightsTest {

  private final Need morning = need(1, A, 0, 60, WHITE);
  private final Need noon = need(2, B, 30, 120, WHITE);

  @Test
  void a_night_as_long_as_the_longest_journey_parts_what_lies_before_and_after() {
    Need next = need(3, A, 140, 200, WHITE);

    assertEquals(
        List.of(List.of(noon, morning), List.of(next)),
        Nights.part(List.of(noon, next, morning), bothWays(20, A, B)));
  }

  @Test
  void a_night_that_is_a_minute_too_short_parts_nothing() {
    List<Need> needs = List.of(morning, noon, need(3, A, 139, 200, WHITE));

    assertEquals(List.of(needs), Nights.part(needs, bothWays(20, A, B)));
  }

  @Test
  void no_night_is_long_enough_for_a_church_that_cannot_be_reached() {
    List<Need> needs = List.of(morning, need(3, C, 10_000, 10_060, WHITE));

    assertEquals(List.of(needs), Nights.part(needs, bothWays(20, A, B)));
  }
}
