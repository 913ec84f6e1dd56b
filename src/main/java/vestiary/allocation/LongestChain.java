package vestiary.allocation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedList;
import java.util.List;

/** The most needs that one piece can serve one after another. */
final class LongestChain {

  private static final int NONE = -1;

  private LongestChain() {}

  /** One longest chain out of the needs, in order of time; the same one every time. */
  static List<Integer> of(List<Integer> needs, Succession succession) {
    List<Integer> inTurn = succession.inTurn(needs);
    int[] length = new int[inTurn.size()];
    int[] before = new int[inTurn.size()];
    Arrays.fill(before, NONE);
    int end = NONE;
    for (int at = 0; at < length.length; at++) {
      for (int earlier = 0; earlier < at; earlier++) {
        if (length[earlier] > length[at]
            && succession.precedes(inTurn.get(earlier), inTurn.get(at))) {
          length[at] = length[earlier];
          before[at] = earlier;
        }
      }
      length[at]++;
      end = end == NONE || length[at] > length[end] ? at : end;
    }
    LinkedList<Integer> chain = new LinkedList<>();
    for (int at = end; at != NONE; at = before[at]) {
      chain.addFirst(inTurn.get(at));
    }
    return new ArrayList<>(chain);
  }
}
