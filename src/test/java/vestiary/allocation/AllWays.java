package vestiary.allocation;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/**
 * Which sets of needs the pieces of a small span can serve, by going through all sets: those that
 * one piece serves in turn, then with each further piece all unions. Written apart from what it
 * checks.
 */
final class AllWays {

  private final List<Need> needs;
  private final BitSet served = new BitSet();

  AllWays(Span span) {
    this.needs = span.needs();
    served.set(0);
    for (Piece piece : span.pieces()) {
      int[] turns = turns(piece, span);
      BitSet before = (BitSet) served.clone();
      before.stream().forEach(set -> Arrays.stream(turns).forEach(turn -> served.set(set | turn)));
    }
  }

  boolean canServe(Collection<Need> asked) {
    return served.get(
        IntStream.range(0, needs.size())
            .filter(place -> asked.contains(needs.get(place)))
            .map(place -> 1 << place)
            .sum());
  }

  boolean canServeAll() {
    return canServe(needs);
  }

  /** All sets that the piece serves in turn: each with one need more, as long as none clash. */
  private int[] turns(Piece piece, Span span) {
    int[] turns = {0};
    for (int place = 0; place < needs.size(); place++) {
      Need need = needs.get(place);
      if (serves(piece, need, span)) {
        int bit = 1 << place;
        int clashing = clashing(need, span);
        int[] longer =
            Arrays.stream(turns).filter(turn -> (turn & clashing) == 0).map(t -> t | bit).toArray();
        turns = IntStream.concat(Arrays.stream(turns), Arrays.stream(longer)).toArray();
      }
    }
    return turns;
  }

  private int clashing(Need need, Span span) {
    return IntStream.range(0, needs.size())
        .filter(
            other ->
                !precedes(need, needs.get(other), span) && !precedes(needs.get(other), need, span))
        .map(other -> 1 << other)
        .sum();
  }

  static boolean precedes(Need one, Need other, Span span) {
    if (one.church().equals(other.church())) {
      return !one.window().end().plus(span.policies().turn()).isAfter(other.window().start());
    }
    return span.journeys()
        .find(one.church(), other.church())
        .filter(time -> !one.window().cleared().plus(time).isAfter(other.window().setOut()))
        .isPresent();
  }

  static boolean serves(Piece piece, Need need, Span span) {
    boolean atHome = piece.home().equals(need.church());
    if (!piece.colours().contains(need.colour())
        || (piece.staysHome() && !atHome)
        || piece.keptFrom().contains(need.mass())) {
      return false;
    }
    return span.journeys()
        .find(piece.home(), need.church())
        .filter(
            time ->
                piece.away().stream()
                    .allMatch(
                        away ->
                            !away.until().plus(time).isAfter(need.window().setOut())
                                || !need.window().cleared().plus(time).isAfter(away.from())))
        .isPresent();
  }
}
