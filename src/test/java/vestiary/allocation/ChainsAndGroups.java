package vestiary.allocation;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Groups of needs by the longest chain that ends with them (L. Mirsky 1971). */
final class ChainsAndGroups {

  private ChainsAndGroups() {}

  /** The groups, those that end the shortest chains first. */
  static List<List<Integer>> groups(Succession order, int needs) {
    List<List<Integer>> groups = new ArrayList<>();
    for (int need : order.inTurn(IntStream.range(0, needs).boxed().toList())) {
      int height = 0;
      for (int level = 0; level < groups.size(); level++) {
        boolean follows =
            groups.get(level).stream().anyMatch(earlier -> order.precedes(earlier, need));
        height = follows ? level + 1 : height;
      }
      if (height == groups.size()) {
        groups.add(new ArrayList<>());
      }
      groups.get(height).add(need);
    }
    groups.forEach(group -> group.sort(null));
    return groups;
  }
}
