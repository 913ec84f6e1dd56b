package vestiary.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.allocation.Minutes.A;
import static vestiary.allocation.Minutes.B;
import static vestiary.allocation.Minutes.minute;
import static vestiary.allocation.Minutes.need;
import static vestiary.allocation.Minutes.piece;
import static vestiary.calendar.Colour.WHITE;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/** Pieces count at the church where they lie, from the moment they do; worked by hand. */
class LyingTest {

  private static final List<Need> TWO =
      List.of(need(1, A, 100, 150, WHITE), need(2, A, 100, 150, WHITE));
  private static final Piece P = piece("p", A, WHITE);
  private static final Piece Q = piece("q", A, WHITE);
  private static final Piece R = piece("r", B, WHITE);

  @Test
  void what_was_left_elsewhere_is_missing_at_home_and_can_be_carried_back() {
    Shortage shortage = only(find(span(List.of(P, Q), Map.of("q", List.of(at(B, 0))))));

    assertEquals(Level.LOCAL, shortage.level());
    assertEquals(List.of(P), shortage.pieces());
    assertEquals(List.of(Q), shortage.elsewhere());
  }

  @Test
  void what_was_left_here_is_there_though_it_belongs_elsewhere() {
    assertEquals(List.of(), find(span(List.of(P, R), Map.of("r", List.of(at(A, 0))))));
  }

  @Test
  void what_comes_in_time_is_there_and_what_comes_a_minute_late_is_not() {
    assertEquals(List.of(), find(span(List.of(P, R), Map.of("r", List.of(at(A, 100))))));
    only(find(span(List.of(P, R), Map.of("r", List.of(at(A, 101))))));
  }

  @Test
  void what_went_on_before_is_gone() {
    only(find(span(List.of(P, R), Map.of("r", List.of(at(A, 0), at(B, 90))))));
  }

  private static Lying.Stop at(ChurchId church, int since) {
    return new Lying.Stop(church, minute(since));
  }

  private static Span span(List<Piece> pieces, Map<String, List<Lying.Stop>> stops) {
    return new Span(TWO, pieces, Minutes.bothWays(10, A, B), Minutes.NO_TURN, new Lying(stops));
  }

  private static List<Shortage> find(Span span) {
    List<Shortage> found = ClashCheck.find(span);
    found.forEach(one -> assertEquals(List.of(), ShortageProof.findObjections(one, span)));
    return found;
  }

  private static Shortage only(List<Shortage> found) {
    assertEquals(1, found.size(), found.toString());
    return found.get(0);
  }
}
