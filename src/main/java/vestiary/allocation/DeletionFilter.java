package vestiary.allocation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;

/**
 * Leaves needs out of a set that cannot all be served, as long as the others still cannot: what is
 * left is a set from which nothing can be left out, short of a search that gives up.
 *
 * <p>Source: J. W. Chinneck's deletion filter (from memory).
 */
final class DeletionFilter {

  private final Succession succession;
  private final HandOut handOut;

  DeletionFilter(Succession succession, HandOut handOut) {
    this.succession = succession;
    this.handOut = handOut;
  }

  /**
   * What is left, in ascending order. The first needs that cannot all be served are cut out; of
   * these the last stays, and the others go in halves.
   *
   * @param needs a set that was shown not to be servable
   * @param farthestFirst whether those farthest in time from the last go first, or the nearest
   */
  List<Integer> reduce(Collection<Integer> needs, boolean farthestFirst) {
    List<Integer> inTurn = succession.inTurn(needs);
    List<Integer> first = inTurn.subList(0, shortest(inTurn));
    int last = first.get(first.size() - 1);
    List<Integer> others = new ArrayList<>(first.subList(0, first.size() - 1));
    if (!farthestFirst) {
      Collections.reverse(others);
    }
    others.add(last);
    return leaveOut(others);
  }

  /** How many of the first cannot all be served, as few as possible. */
  private int shortest(List<Integer> inTurn) {
    int served = 0;
    int without = inTurn.size();
    while (without - served > 1) {
      int middle = (served + without) / 2;
      if (cannotAllBeServed(inTurn.subList(0, middle))) {
        without = middle;
      } else {
        served = middle;
      }
    }
    return without;
  }

  private List<Integer> leaveOut(List<Integer> needs) {
    List<Integer> kept = needs;
    for (int size = Math.max(1, kept.size() / 2); size >= 1; size /= 2) {
      // The last need is the one that cannot be served with those before it, so it stays.
      for (int from = 0; from < kept.size() - 1; ) {
        int to = Math.min(from + size, kept.size() - 1);
        List<Integer> others = new ArrayList<>(kept.subList(0, from));
        others.addAll(kept.subList(to, kept.size()));
        if (cannotAllBeServed(others)) {
          kept = others;
        } else {
          from = to;
        }
      }
    }
    return kept.stream().sorted().toList();
  }

  private boolean cannotAllBeServed(List<Integer> needs) {
    return handOut.of(needs) == HandOut.Outcome.ONE_WITHOUT;
  }
}
