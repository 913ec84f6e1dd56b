package vestiary.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.allocation.WenlowValley.HT;
import static vestiary.allocation.WenlowValley.at;
import static vestiary.allocation.WenlowValley.codes;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;
import vestiary.vesting.Brings;
import vestiary.vesting.Ministers;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.VestedMass;

/**
 * The confirmation of the invented cluster, Saturday 5 December 2026 at 10:30 in Holy Trinity:
 * bishop with his own, five concelebrants, two deacons. Numbers counted by hand from its stock.
 */
class BishopsVisitTest {

  private final Span span = WenlowValley.span(WenlowValley.stock(), confirmation());

  @Test
  void five_concelebrants_and_three_red_sets_is_a_local_shortfall_of_two() {
    Shortage chasubles = of(PieceKind.CHASUBLE);

    assertEquals(Level.LOCAL, chasubles.level());
    assertEquals(5, chasubles.needed());
    assertEquals(List.of("HT-R1-C", "HT-R2-C", "HT-R3-C"), codes(chasubles.pieces()));
    assertEquals(
        List.of("OL-R1-C", "PP-R1-C", "SA-R1-C", "SA-R2-C", "SJ-R1-C", "SM-R1-C"),
        codes(chasubles.elsewhere()));
    assertEquals("PP-R2-C", chasubles.notServing().get(0).piece().code());
    assertEquals(Hindrance.STAYS_HOME, chasubles.notServing().get(0).hindrance());
    assertEquals(Severity.DECIDE, chasubles.severity());
  }

  @Test
  void two_deacons_and_one_red_dalmatic_is_a_shortfall_of_the_whole_cluster() {
    Shortage dalmatics = of(PieceKind.DALMATIC);

    assertEquals(Level.CLUSTER, dalmatics.level());
    assertEquals(2, dalmatics.needed());
    assertEquals(1, dalmatics.available());
  }

  @Test
  void the_deacon_s_stole_that_comes_with_it_makes_it_a_must_and_is_not_told_apart() {
    assertEquals(Severity.MUST, of(PieceKind.DALMATIC).severity());
    assertEquals(2, ClashCheck.find(span).size());
  }

  @Test
  void a_dalmatic_may_be_left_out_if_the_deacons_bring_their_stoles() {
    Brings stoles = new Brings(Role.DEACON, 2, Set.of(PieceKind.DEACON_STOLE));
    Ministers ministers =
        new Ministers(true, 0, 2, List.of(WenlowValley.hisOwn(Role.PRINCIPAL), stoles));

    List<Shortage> found =
        ClashCheck.find(WenlowValley.span(WenlowValley.stock(), confirmation(ministers)));

    assertEquals(1, found.size());
    assertEquals(Severity.DECIDE, found.get(0).severity());
  }

  @Test
  void the_church_is_busy_from_half_past_nine_to_a_quarter_to_one() {
    assertEquals(at("2026-12-05T09:30"), of(PieceKind.CHASUBLE).from());
    assertEquals(at("2026-12-05T12:45"), of(PieceKind.CHASUBLE).to());
  }

  private Shortage of(PieceKind kind) {
    return ClashCheck.find(span).stream()
        .filter(shortage -> shortage.pieceKind() == kind)
        .findFirst()
        .orElseThrow();
  }

  private static VestedMass confirmation() {
    return confirmation(new Ministers(true, 5, 2, List.of(WenlowValley.hisOwn(Role.PRINCIPAL))));
  }

  private static VestedMass confirmation(Ministers ministers) {
    return WenlowValley.liturgy(
        MassKind.CONFIRMATION, HT, "2026-12-05T10:30", 105, Colour.RED, ministers);
  }
}
