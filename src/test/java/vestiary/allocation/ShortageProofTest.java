package vestiary.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.allocation.Minutes.A;
import static vestiary.allocation.Minutes.B;
import static vestiary.allocation.Minutes.need;
import static vestiary.allocation.Minutes.piece;
import static vestiary.calendar.Colour.RED;
import static vestiary.calendar.Colour.WHITE;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/** A finding that has been tampered with is refused, each time for its own reason. */
class ShortageProofTest {

  private final Need early = need(1, A, 0, 60, WHITE);
  private final Need same = need(2, A, 0, 60, WHITE);
  private final Need far = need(3, B, 70, 130, WHITE);
  private final Need later = need(4, A, 600, 660, WHITE);
  private final Piece white = piece("w1", A, WHITE);
  private final Piece red = piece("r1", A, RED);
  private final Span span =
      new Span(
          List.of(early, same, far, later),
          List.of(white, red),
          Minutes.bothWays(30, A, B),
          Minutes.NO_TURN);
  private final Shortage found = Minutes.ofCluster(span).get(0);

  @Test
  void the_finding_itself_holds() {
    assertEquals(List.of(early, same, far), found.needs());
    assertEquals(ShortageKind.UNREACHABLE, found.kind());
    assertEquals(List.of(), ShortageProof.findObjections(found, span));
  }

  @Test
  void a_need_that_can_share_a_piece_is_no_part_of_it() {
    List<Need> needs = List.of(early, same, far, later);

    assertRefused("two of the needs can share a piece", with(needs, found.stock()));
  }

  @Test
  void a_need_that_nobody_has_is_no_part_of_it() {
    List<Need> needs = List.of(early, same, need(9, B, 70, 130, WHITE));

    assertRefused("a need is not asked for", with(needs, found.stock()));
  }

  @Test
  void a_need_does_not_count_twice() {
    assertRefused("a need stands twice", with(List.of(early, early, far), found.stock()));
  }

  @Test
  void a_piece_that_serves_may_not_be_left_out() {
    Stock nothing = new Stock(List.of(), List.of(), List.of());

    assertRefused("the pieces are not those that serve", with(found.needs(), nothing));
  }

  @Test
  void a_piece_of_another_colour_is_not_counted() {
    Stock both = new Stock(List.of(red, white), List.of(), List.of());

    assertRefused("the pieces are not those that serve", with(found.needs(), both));
  }

  @Test
  void a_piece_that_arrives_since_makes_the_finding_void() {
    List<Piece> pieces = new ArrayList<>(span.pieces());
    pieces.add(piece("w2", B, WHITE));
    pieces.add(piece("w3", B, WHITE));
    Span richer = new Span(span.needs(), pieces, span.journeys(), span.policies());

    assertNotEquals(List.of(), ShortageProof.findObjections(found, richer));
  }

  @Test
  void a_shorter_journey_makes_the_finding_void() {
    Span nearer =
        new Span(span.needs(), span.pieces(), Minutes.bothWays(10, A, B), span.policies());

    assertNotEquals(List.of(), ShortageProof.findObjections(found, nearer));
  }

  @Test
  void the_hour_is_not_blamed_for_what_the_journey_does() {
    Shortage blamed =
        new Shortage(
            found.level(),
            ShortageKind.SHORTAGE,
            found.needs(),
            found.stock(),
            found.unserved(),
            found.exhausted(),
            List.of(),
            found.certificate());

    assertRefused("journey or hour is wrongly blamed", blamed);
  }

  @Test
  void a_must_is_refused_where_a_lawful_colour_is_left() {
    Shortage graver =
        new Shortage(
            found.level(),
            found.kind(),
            found.needs(),
            found.stock(),
            found.unserved(),
            List.of(early),
            found.late(),
            found.certificate());

    assertRefused("a lawful colour serves all the exhausted needs", graver);
  }

  @Test
  void as_many_go_without_as_pieces_are_missing() {
    Shortage milder =
        new Shortage(
            found.level(),
            found.kind(),
            found.needs(),
            found.stock(),
            List.of(far),
            found.exhausted(),
            found.late(),
            found.certificate());

    assertRefused("not as many go without as pieces are missing", milder);
  }

  private Shortage with(List<Need> needs, Stock stock) {
    return new Shortage(
        found.level(),
        found.kind(),
        needs,
        stock,
        found.unserved(),
        List.of(),
        found.late(),
        found.certificate());
  }

  private void assertRefused(String objection, Shortage tampered) {
    List<String> objections = ShortageProof.findObjections(tampered, span);
    assertTrue(objections.contains(objection), objections.toString());
  }
}
