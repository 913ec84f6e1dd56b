package vestiary.vesting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;

/** Common practice; published sacristans' guides ask for 20 to 40 minutes before Mass. */
class WindowTest {

  @ParameterizedTest(name = "{0}, {1} min, holy day {2}, bishop {3}, {4} concelebrants: {6} to {7}")
  @CsvSource({
    // the three hours of the invented scenario
    "10:30, 105, false, true,  5, 0,  09:30, 12:45",
    "18:30, 90,  true,  false, 3, 0,  18:00, 20:15",
    "08:00, 60,  true,  false, 0, 0,  07:30, 09:15",
    // weekday: the cluster's 20 minutes; six concelebrants make it a large one
    "12:10, 30,  false, false, 0, 0,  11:50, 12:55",
    "12:10, 30,  false, false, 5, 0,  11:50, 12:55",
    "12:10, 30,  false, false, 6, 0,  11:10, 13:10",
    "12:10, 30,  true,  false, 6, 0,  11:10, 13:10",
    // chosen for this Mass, even against the large one
    "12:10, 30,  false, true,  0, 45, 11:25, 13:10"
  })
  void vestments_are_kept_from_set_out_to_clearance(
      String start,
      int minutes,
      boolean holyDay,
      boolean bishop,
      int concelebrants,
      int chosen,
      String setOut,
      String cleared) {
    MassTime time =
        new MassTime(
            at(start),
            Duration.ofMinutes(minutes),
            holyDay,
            new Sacristy(Duration.ofMinutes(30), Duration.ofMinutes(15)),
            Duration.ofMinutes(chosen));

    Window window = Window.of(mass(time, bishop, concelebrants), VestingPolicies.DEFAULTS);

    assertEquals(at(setOut), window.setOut());
    assertEquals(at(cleared), window.cleared());
  }

  @Test
  void a_church_that_takes_longer_than_a_large_liturgy_keeps_its_own_time() {
    Sacristy slow = new Sacristy(Duration.ofMinutes(90), Duration.ofMinutes(45));
    MassTime time = new MassTime(at("10:00"), Duration.ofMinutes(60), true, slow, Duration.ZERO);

    Window window = Window.of(mass(time, true, 0), VestingPolicies.DEFAULTS);

    assertEquals(at("08:30"), window.setOut());
    assertEquals(at("11:45"), window.cleared());
  }

  @Test
  void windows_that_touch_do_not_overlap() {
    Window early = new Window(at("07:00"), at("07:30"), at("08:30"), at("09:00"));
    Window late = new Window(at("09:00"), at("09:30"), at("10:30"), at("11:00"));
    Window between = new Window(at("08:59"), at("09:30"), at("10:30"), at("11:00"));

    assertFalse(early.overlaps(late) || late.overlaps(early));
    assertTrue(early.overlaps(between) && between.overlaps(early));
  }

  @ParameterizedTest
  @ValueSource(ints = {4, 361, 0, -5})
  void a_mass_of_less_than_five_minutes_or_more_than_six_hours_is_nonsense(int minutes) {
    Sacristy sacristy = new Sacristy(Duration.ZERO, Duration.ZERO);

    assertThrows(
        IllegalArgumentException.class,
        () ->
            new MassTime(at("10:00"), Duration.ofMinutes(minutes), true, sacristy, Duration.ZERO));
  }

  private static Instant at(String time) {
    return Instant.parse("2026-12-05T" + time + ":00Z");
  }

  private static VestedMass mass(MassTime time, boolean bishop, int concelebrants) {
    return new VestedMass(
        new MassId(new UUID(0, 1)),
        new ChurchId(new UUID(0, 2)),
        MassKind.OF_THE_DAY,
        time,
        new MassColour(Colour.WHITE, false, false),
        new Ministers(bishop, concelebrants, 0, List.of()));
  }
}
