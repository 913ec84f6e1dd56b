package vestiary.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.allocation.WenlowValley.HT;
import static vestiary.allocation.WenlowValley.PP;
import static vestiary.allocation.WenlowValley.SA;
import static vestiary.allocation.WenlowValley.concelebrants;
import static vestiary.allocation.WenlowValley.mass;
import static vestiary.allocation.WenlowValley.piece;
import static vestiary.allocation.WenlowValley.priestAlone;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.calendar.Colour;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.VestedMass;

/**
 * Whether a substitute is left: the principal celebrant always wears a chasuble of the colour,
 * concelebrants may go without (Redemptionis Sacramentum 124; GIRM 209), everyone wears a stole (RS
 * 123), rose may yield to violet (GIRM 346 f).
 */
class LadderSeverityTest {

  private final VestedMass palmSunday =
      mass(HT, "2026-12-06T10:30", 60, Colour.RED, concelebrants(4));

  @Test
  void five_priests_with_one_red_chasuble_and_five_stoles_are_to_decide() {
    List<Piece> pieces = new ArrayList<>(stoles(5, Colour.RED));
    pieces.add(piece("R1", PieceKind.CHASUBLE, Colour.RED, HT));

    Shortage shortage = only(WenlowValley.span(pieces, palmSunday));

    assertEquals(Severity.DECIDE, shortage.severity());
    assertEquals(5, shortage.needed());
    assertEquals(4, shortage.unserved().size());
    assertTrue(shortage.unserved().stream().allMatch(n -> n.role() == Role.CONCELEBRANT));
  }

  @Test
  void a_principal_celebrant_without_a_red_chasuble_must_be_mended() {
    Span span = WenlowValley.span(stoles(5, Colour.RED), palmSunday);

    Shortage shortage = only(span);

    assertEquals(Severity.MUST, shortage.severity());
    assertEquals(5, shortage.needed());
    assertEquals(0, shortage.available());
    assertEquals(
        List.of(Role.PRINCIPAL), shortage.exhausted().stream().map(n -> n.role()).toList());
    assertEquals(List.of(), ShortageProof.findObjections(shortage, span));
  }

  @Test
  void a_concelebrant_without_a_stole_must_be_mended_even_if_the_chasubles_say_it() {
    List<Piece> pieces = new ArrayList<>(stoles(4, Colour.RED));
    pieces.add(piece("R1", PieceKind.CHASUBLE, Colour.RED, HT));
    Span span = WenlowValley.span(pieces, palmSunday);

    Shortage shortage = only(span);

    assertEquals(PieceKind.CHASUBLE, shortage.pieceKind());
    assertEquals(Severity.MUST, shortage.severity());
    assertTrue(shortage.exhausted().stream().allMatch(n -> n.kind() == PieceKind.STOLE));
    assertEquals(5, shortage.exhausted().size());
    assertEquals(List.of(), ShortageProof.findObjections(shortage, span));
  }

  @Test
  void stoles_that_fall_shorter_than_the_chasubles_are_told_apart() {
    List<Piece> pieces = new ArrayList<>(stoles(1, Colour.RED));
    pieces.add(piece("R1", PieceKind.CHASUBLE, Colour.RED, HT));
    pieces.add(piece("R2", PieceKind.CHASUBLE, Colour.RED, HT));

    List<Shortage> found = ClashCheck.find(WenlowValley.span(pieces, palmSunday));

    assertEquals(
        List.of(PieceKind.CHASUBLE, PieceKind.STOLE),
        found.stream().map(Shortage::pieceKind).toList());
    assertEquals(List.of(3, 4), found.stream().map(Shortage::missing).toList());
  }

  @Test
  void rose_and_violet_together_count_before_a_rose_mass_must_be_mended() {
    VestedMass[] masses = {
      mass(HT, "2026-12-13T10:30", 60, Colour.ROSE, priestAlone()),
      mass(SA, "2026-12-13T10:30", 60, Colour.ROSE, priestAlone()),
      mass(PP, "2026-12-13T10:30", 60, Colour.ROSE, priestAlone())
    };
    List<Piece> pieces = new ArrayList<>(stoles(3, Colour.ROSE));
    pieces.add(piece("P1", PieceKind.CHASUBLE, Colour.ROSE, HT));
    pieces.add(piece("V1", PieceKind.CHASUBLE, Colour.VIOLET, SA));
    Span short1 = WenlowValley.span(pieces, masses);
    pieces.add(piece("V2", PieceKind.CHASUBLE, Colour.VIOLET, SA));
    Span enough = WenlowValley.span(pieces, masses);

    assertEquals(Severity.MUST, ofChasubles(short1).severity());
    assertEquals(3, ofChasubles(short1).exhausted().size());
    assertEquals(1, ofChasubles(short1).available());
    assertEquals(List.of(), ShortageProof.findObjections(ofChasubles(short1), short1));
    assertEquals(Severity.DECIDE, ofChasubles(enough).severity());
  }

  @Test
  void a_violet_mass_that_takes_the_last_violet_set_from_a_rose_one_is_named_with_it() {
    VestedMass[] masses = {
      mass(HT, "2026-12-13T10:30", 60, Colour.ROSE, priestAlone()),
      mass(SA, "2026-12-13T10:30", 60, Colour.VIOLET, priestAlone())
    };
    List<Piece> pieces = new ArrayList<>(stoles(2, Colour.ROSE));
    pieces.addAll(stoles(2, Colour.VIOLET));
    pieces.add(piece("V1", PieceKind.CHASUBLE, Colour.VIOLET, SA));
    Span span = WenlowValley.span(pieces, masses);

    Shortage must =
        ClashCheck.find(span).stream()
            .filter(s -> s.severity() == Severity.MUST)
            .findFirst()
            .orElseThrow();

    assertEquals(PieceKind.CHASUBLE, must.pieceKind());
    assertEquals(2, must.needed());
    assertEquals(1, must.available());
    assertEquals(List.of(), ShortageProof.findObjections(must, span));
  }

  private static List<Piece> stoles(int number, Colour colour) {
    List<Piece> stoles = new ArrayList<>();
    for (int n = 1; n <= number; n++) {
      stoles.add(piece(colour.name().charAt(0) + "S" + n, PieceKind.STOLE, colour, HT));
    }
    return stoles;
  }

  private static Shortage ofChasubles(Span span) {
    return Minutes.ofCluster(span).stream()
        .filter(shortage -> shortage.pieceKind() == PieceKind.CHASUBLE)
        .findFirst()
        .orElseThrow();
  }

  private static Shortage only(Span span) {
    List<Shortage> found = ClashCheck.find(span);
    assertEquals(1, found.size());
    return found.get(0);
  }
}
