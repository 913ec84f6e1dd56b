package vestiary.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.allocation.WenlowValley.HT;
import static vestiary.allocation.WenlowValley.OL;
import static vestiary.allocation.WenlowValley.SA;
import static vestiary.allocation.WenlowValley.liturgy;
import static vestiary.allocation.WenlowValley.priestAlone;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.PieceKind;
import vestiary.vesting.VestedMass;

/**
 * Benediction in three churches of the invented cluster on 6 December 2026 with two copes and two
 * humeral veils. By hand: those of Holy Trinity are free at 16:45, at Our Lady's at 16:57, in time
 * for a set-out at 16:57, so for 17:27.
 */
class ThreeBenedictionsTest {

  @Test
  void three_at_four_o_clock_lack_a_cope_and_a_veil() {
    Span span = span("16:00");

    List<Shortage> found = ClashCheck.find(span);

    assertEquals(
        List.of(PieceKind.COPE, PieceKind.HUMERAL_VEIL),
        found.stream().map(Shortage::pieceKind).toList());
    for (Shortage shortage : found) {
      assertEquals(Level.CLUSTER, shortage.level());
      assertEquals(ShortageKind.SHORTAGE, shortage.kind());
      assertEquals(Severity.MUST, shortage.severity());
      assertEquals(3, shortage.needed());
      assertEquals(2, shortage.available());
      assertEquals(List.of(OL), shortage.unserved().stream().map(Need::church).toList());
      assertEquals(List.of(), ShortageProof.findObjections(shortage, span));
    }
  }

  @ParameterizedTest
  @CsvSource({"17:00, 2", "17:26, 2", "17:27, 0", "17:30, 0", "18:00, 0"})
  void our_lady_s_first_workable_start_is_27_past_five(String start, long shortOfCluster) {
    List<Shortage> found = ClashCheck.find(span(start));

    assertEquals(shortOfCluster, found.stream().filter(s -> s.level() == Level.CLUSTER).count());
  }

  @Test
  void at_half_past_five_a_cope_and_a_veil_are_still_to_be_carried() {
    List<Shortage> found = ClashCheck.find(span("17:30"));

    assertEquals(2, found.size());
    for (Shortage shortage : found) {
      assertEquals(Level.LOCAL, shortage.level());
      assertEquals(0, shortage.available());
      assertEquals(2, shortage.elsewhere().size());
      assertEquals(Severity.DECIDE, shortage.severity());
    }
  }

  private static Span span(String startAtOurLadys) {
    return WenlowValley.span(
        WenlowValley.stock(),
        benediction(HT, "16:00"),
        benediction(SA, "16:00"),
        benediction(OL, startAtOurLadys));
  }

  private static VestedMass benediction(ChurchId church, String start) {
    return liturgy(
        MassKind.BENEDICTION, church, "2026-12-06T" + start, 30, Colour.WHITE, priestAlone());
  }
}
