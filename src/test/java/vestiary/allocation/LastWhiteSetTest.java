package vestiary.allocation;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.allocation.WenlowValley.HT;
import static vestiary.allocation.WenlowValley.OL;
import static vestiary.allocation.WenlowValley.PP;
import static vestiary.allocation.WenlowValley.SA;
import static vestiary.allocation.WenlowValley.SJ;
import static vestiary.allocation.WenlowValley.SM;
import static vestiary.allocation.WenlowValley.at;
import static vestiary.allocation.WenlowValley.codes;
import static vestiary.allocation.WenlowValley.mass;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import vestiary.calendar.Colour;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Ministers;
import vestiary.vesting.Piece;
import vestiary.vesting.Role;
import vestiary.vesting.VestedMass;

/**
 * Three concelebrants need white and two white sets are there: the jubilee of the invented cluster,
 * 8 December 2026 at 18:30 in Saint Anne. Expected numbers counted by hand from its list of stock.
 */
class LastWhiteSetTest {

  private final Span span = WenlowValley.span(WenlowValley.stock(), jubilee());

  @Test
  void three_concelebrants_and_two_white_sets_is_a_shortfall_of_one() {
    Shortage shortage = only(ClashCheck.find(span));

    assertEquals(Level.LOCAL, shortage.level());
    assertEquals(ShortageKind.SHORTAGE, shortage.kind());
    assertEquals(Severity.DECIDE, shortage.severity());
    assertEquals(3, shortage.needed());
    assertEquals(2, shortage.available());
    assertEquals(1, shortage.missing());
    assertEquals(List.of("SA-W1-C", "SA-W2-C"), codes(shortage.pieces()));
  }

  @Test
  void eight_white_chasubles_of_five_churches_could_be_carried() {
    Shortage shortage = only(ClashCheck.find(span));

    Map<ChurchId, Long> byHome =
        shortage.elsewhere().stream().collect(groupingBy(Piece::home, counting()));
    assertEquals(Map.of(HT, 3L, OL, 2L, SJ, 1L, PP, 1L, SM, 1L), byHome);
  }

  @Test
  void every_other_white_chasuble_has_its_reason_and_the_numbers_add_up_to_thirteen() {
    Shortage shortage = only(ClashCheck.find(span));

    List<String> reasons =
        shortage.notServing().stream()
            .map(
                not ->
                    not.piece().code()
                        + " "
                        + not.hindrance().id()
                        + not.away().stream().map(a -> " " + a.reason()).toList())
            .toList();
    assertEquals(
        List.of(
            "HT-W4-C stays-home[]",
            "SA-W3-C away[ at the cleaner]",
            "SJ-W2-C away[ lining being mended]"),
        reasons);
    assertEquals(
        13, shortage.available() + shortage.elsewhere().size() + shortage.notServing().size());
  }

  @Test
  void the_concelebrant_counted_last_goes_without_and_the_window_is_that_of_the_sacristy() {
    Shortage shortage = only(ClashCheck.find(span));

    assertEquals(1, shortage.unserved().size());
    assertEquals(Role.CONCELEBRANT, shortage.unserved().get(0).role());
    assertEquals(3, shortage.unserved().get(0).ordinal());
    assertEquals(at("2026-12-08T18:00"), shortage.from());
    assertEquals(at("2026-12-08T20:15"), shortage.to());
  }

  @Test
  void a_white_set_that_lives_there_mends_it() {
    List<Piece> pieces = new ArrayList<>(WenlowValley.stock());
    pieces.removeIf(piece -> piece.set().equals("HT-W1"));
    WenlowValley.stock().stream()
        .filter(piece -> piece.set().equals("HT-W1"))
        .map(piece -> moved(piece, SA))
        .forEach(pieces::add);

    List<Shortage> found = ClashCheck.find(WenlowValley.span(pieces, jubilee()));

    assertEquals(List.of(), found);
  }

  @Test
  void if_no_white_set_may_leave_its_church_only_a_substitute_mends_it() {
    List<Piece> pieces = WenlowValley.stock().stream().map(LastWhiteSetTest::staying).toList();

    Shortage shortage = only(ClashCheck.find(WenlowValley.span(pieces, jubilee())));

    assertEquals(Level.CLUSTER, shortage.level());
    assertEquals(3, shortage.needed());
    assertEquals(2, shortage.available());
    // The third man wants a stole as well, and no lawful substitute stands for that.
    assertEquals(Severity.MUST, shortage.severity());
  }

  @Test
  void the_proof_holds_when_counted_again() {
    assertEquals(List.of(), ShortageProof.findObjections(only(ClashCheck.find(span)), span));
  }

  private static VestedMass jubilee() {
    Ministers ministers = new Ministers(false, 3, 0, List.of(WenlowValley.hisOwn(Role.PRINCIPAL)));
    return mass(SA, "2026-12-08T18:30", 90, Colour.WHITE, ministers);
  }

  private static Piece moved(Piece piece, ChurchId home) {
    return new Piece(
        piece.code(), piece.kind(), piece.colours(), home, false, piece.set(), piece.away());
  }

  private static Piece staying(Piece piece) {
    return new Piece(
        piece.code(), piece.kind(), piece.colours(), piece.home(), true, piece.set(), piece.away());
  }

  private static Shortage only(List<Shortage> found) {
    assertTrue(found.size() == 1, "one finding, not " + found.size());
    return found.get(0);
  }
}
