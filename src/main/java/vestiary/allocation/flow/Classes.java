package vestiary.allocation.flow;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import vestiary.allocation.plan.Displeasure;
import vestiary.allocation.plan.Traits;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;

/**
 * Pieces that no need can tell apart are of one class. By what is lawful alone there are few
 * classes; by what people prefer there are more.
 */
final class Classes {

  /** Serves nothing that is asked. */
  static final int USELESS = -1;

  private record Likeness(
      List<Integer> depths, List<Integer> displeasures, String suit, String loose) {}

  private final Demand demand;
  private final boolean preferring;
  private final Map<Likeness, Integer> numbers = new HashMap<>();
  private final List<Likeness> classes = new ArrayList<>();

  /** Sets of which more than one piece goes its own way, by the codes of these. */
  private final Map<String, String> looseSets = new HashMap<>();

  /**
   * @param items all that may be worn
   * @param preferring whether what people prefer tells pieces apart
   */
  Classes(Demand demand, Collection<Item> items, boolean preferring) {
    this.demand = demand;
    this.preferring = preferring;
    Map<String, List<Piece>> loose = new HashMap<>();
    items.stream()
        .filter(item -> item.pieces().size() == 1)
        .map(item -> item.pieces().get(0))
        .filter(piece -> !piece.set().isEmpty())
        .forEach(
            piece -> loose.computeIfAbsent(piece.set(), unknown -> new ArrayList<>()).add(piece));
    loose.values().stream()
        .filter(pieces -> pieces.size() > 1)
        .flatMap(List::stream)
        .forEach(piece -> looseSets.put(piece.code(), piece.set()));
  }

  /** The class of a piece, {@link #USELESS} if it serves nothing. */
  int of(Piece piece) {
    Traits traits = demand.situation().traits(piece);
    List<Integer> depths = demand.asks().stream().map(ask -> ask.depth(piece, traits)).toList();
    if (depths.stream().allMatch(depth -> depth == Ask.NEVER)) {
      return USELESS;
    }
    Likeness likeness =
        preferring
            ? new Likeness(
                depths,
                displeasures(depths, piece, traits),
                piece.kind() == PieceKind.CHASUBLE ? traits.suit() : "",
                looseSets.getOrDefault(piece.code(), ""))
            : new Likeness(depths, List.of(), "", "");
    return numbers.computeIfAbsent(
        likeness,
        unknown -> {
          classes.add(likeness);
          return classes.size() - 1;
        });
  }

  int size() {
    return classes.size();
  }

  /** How far down the ladder the class serves an ask. */
  int depth(int type, int ask) {
    return classes.get(type).depths().get(ask);
  }

  int displeasure(int type, int ask) {
    return preferring ? classes.get(type).displeasures().get(ask) : 0;
  }

  String suit(int type) {
    return classes.get(type).suit();
  }

  /** Whether pieces of two classes make one set, though they go their own ways. */
  boolean areOneLooseSet(int one, int other) {
    return !classes.get(one).loose().isEmpty()
        && classes.get(one).loose().equals(classes.get(other).loose());
  }

  /** How little people like that an item goes on a journey. */
  int burden(Item item) {
    return preferring
        ? item.pieces().stream()
            .mapToInt(piece -> Displeasure.ofJourney(demand.situation().traits(piece)))
            .sum()
        : 0;
  }

  boolean arePreferring() {
    return preferring;
  }

  private List<Integer> displeasures(List<Integer> depths, Piece piece, Traits traits) {
    List<Integer> displeasures = new ArrayList<>();
    for (int ask = 0; ask < depths.size(); ask++) {
      displeasures.add(
          depths.get(ask) == Ask.NEVER ? 0 : demand.asks().get(ask).displeasure(piece, traits));
    }
    return displeasures;
  }
}
