package vestiary.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.allocation.WenlowValley.HT;
import static vestiary.allocation.WenlowValley.PP;
import static vestiary.allocation.WenlowValley.SJ;
import static vestiary.allocation.WenlowValley.at;
import static vestiary.allocation.WenlowValley.mass;
import static vestiary.allocation.WenlowValley.priestAlone;

import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.calendar.Colour;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.VestedMass;

/**
 * One rose set for three churches on the third weekend of Advent 2026 of the invented cluster. The
 * hours are worked out by hand: Mass 60 minutes, set-out 30, clearance 15, and the drive.
 */
class GaudeteRoseTest {

  private final VestedMass[] masses = {
    mass(HT, "2026-12-12T17:00", 60, Colour.ROSE, priestAlone()),
    mass(SJ, "2026-12-13T08:00", 60, Colour.ROSE, priestAlone()),
    mass(PP, "2026-12-13T08:30", 60, Colour.ROSE, priestAlone()),
    mass(HT, "2026-12-13T10:30", 60, Colour.ROSE, priestAlone())
  };
  private final Span span = WenlowValley.span(WenlowValley.stock(), masses);
  private final List<Shortage> found = ClashCheck.find(span);

  @Test
  void two_pairs_of_masses_want_the_one_rose_set() {
    assertEquals(2, found.size());
    assertEquals(List.of(SJ, PP), churches(found.get(0)));
    assertEquals(List.of(PP, HT), churches(found.get(1)));
    assertTrue(found.stream().allMatch(s -> s.needed() == 2 && s.available() == 1));
    assertTrue(found.stream().allMatch(s -> s.level() == Level.CLUSTER));
  }

  @Test
  void the_first_pair_is_at_one_moment() {
    assertEquals(ShortageKind.SHORTAGE, found.get(0).kind());
    assertEquals(List.of(), found.get(0).late());
  }

  @Test
  void from_upper_wenlow_the_set_comes_eleven_minutes_late() {
    LateArrival late = found.get(1).late().get(0);

    assertEquals(ShortageKind.UNREACHABLE, found.get(1).kind());
    assertEquals(at("2026-12-13T10:11"), late.arrives());
    assertEquals(at("2026-12-13T10:00"), late.due());
  }

  @Test
  void violet_is_always_right_so_somebody_is_to_decide() {
    assertTrue(found.stream().allMatch(s -> s.severity() == Severity.DECIDE));
  }

  @Test
  void upper_wenlow_is_the_one_to_go_without() {
    List<ChurchId> without =
        found.stream().flatMap(s -> s.unserved().stream()).map(Need::church).distinct().toList();

    assertEquals(List.of(PP), without);
  }

  @Test
  void without_a_violet_set_in_reach_it_must_be_mended() {
    List<Piece> noViolet =
        WenlowValley.stock().stream().filter(p -> p.colours().get(0) != Colour.VIOLET).toList();
    Span poorer = WenlowValley.span(noViolet, masses);

    List<Shortage> musts = ClashCheck.find(poorer);

    assertEquals(2, musts.size());
    assertTrue(musts.stream().allMatch(s -> s.severity() == Severity.MUST));
    musts.forEach(must -> assertEquals(List.of(), ShortageProof.findObjections(must, poorer)));
  }

  private static List<ChurchId> churches(Shortage shortage) {
    return shortage.needs().stream().map(Need::church).toList();
  }
}
