package vestiary.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.allocation.WenlowValley.SA;
import static vestiary.allocation.WenlowValley.codes;

import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.calendar.Colour;
import vestiary.vesting.Ministers;
import vestiary.vesting.Role;

/**
 * Two deacons at Saint Anne on 8 December 2026 in the invented cluster: one white dalmatic is
 * there, two at Holy Trinity, and the fourth is overdue from a loan.
 */
class OverdueDalmaticTest {

  @Test
  void one_white_dalmatic_is_to_be_carried_and_the_overdue_one_is_not_counted() {
    Ministers ministers = new Ministers(false, 0, 2, List.of(WenlowValley.hisOwn(Role.PRINCIPAL)));
    Span span =
        WenlowValley.span(
            WenlowValley.stock(),
            WenlowValley.mass(SA, "2026-12-08T18:30", 90, Colour.WHITE, ministers));

    List<Shortage> found = ClashCheck.find(span);

    assertEquals(1, found.size());
    Shortage shortage = found.get(0);
    assertEquals(Level.LOCAL, shortage.level());
    assertEquals(2, shortage.needed());
    assertEquals(List.of("SA-DW1-D"), codes(shortage.pieces()));
    assertEquals(List.of("HT-DW1-D", "HT-DW2-D"), codes(shortage.elsewhere()));
    assertEquals("OL-DW1-D", shortage.notServing().get(0).piece().code());
    assertEquals(Severity.DECIDE, shortage.severity());
    assertEquals(List.of(), ShortageProof.findObjections(shortage, span));
  }
}
