package vestiary.allocation.flow;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import vestiary.allocation.plan.Traits;
import vestiary.vesting.Piece;

/**
 * Pieces that no need can tell apart are of one class. By what is lawful alone there are few
 * classes; by what people prefer there are more.
 */
final class Classes {

  /** Serves nothing that is asked. */
  static final int USELESS = -1;

  private record Likeness(List<Integer> depths, List<Integer> displeasures, String suit) {}

  private final Demand demand;
  private final boolean preferring;
  private final Map<Likeness, Integer> numbers = new HashMap<>();
  private final List<Likeness> classes = new ArrayList<>();

  /**
   * @param preferring whether what people prefer tells pieces apart
   */
  Classes(Demand demand, boolean preferring) {
    this.demand = demand;
    this.preferring = preferring;
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
            ? new Likeness(depths, displeasures(depths, traits), traits.suit())
            : new Likeness(depths, List.of(), "");
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

  /** Whether an owner must be asked before it is carried, and anybody prefers not to. */
  boolean isOnAsking(Item item) {
    return preferring
        && item.pieces().stream().anyMatch(p -> demand.situation().traits(p).onAsking());
  }

  private List<Integer> displeasures(List<Integer> depths, Traits traits) {
    List<Integer> displeasures = new ArrayList<>();
    for (int ask = 0; ask < depths.size(); ask++) {
      displeasures.add(
          depths.get(ask) == Ask.NEVER ? 0 : demand.asks().get(ask).displeasure(traits));
    }
    return displeasures;
  }
}
