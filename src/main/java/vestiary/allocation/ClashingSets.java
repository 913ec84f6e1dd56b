package vestiary.allocation;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Sets of needs that all clash and are more than the pieces that serve any of them, so that every
 * need that could go without on such a proof is named in one.
 */
final class ClashingSets {

  private final Succession succession;
  private final Eligibility eligibility;
  private final BitSet settled = new BitSet();
  private final List<List<Integer>> found = new ArrayList<>();

  private ClashingSets(Succession succession, Eligibility eligibility) {
    this.succession = succession;
    this.eligibility = eligibility;
  }

  /** The sets, each in ascending order; the same ones every time. */
  static List<List<Integer>> find(int[] block, Succession succession, Eligibility eligibility) {
    ClashingSets sets = new ClashingSets(succession, eligibility);
    sets.search(block);
    return sets.found;
  }

  private void search(int[] block) {
    for (int need : block) {
      if (!settled.get(need)) {
        search(need, block);
      }
    }
  }

  private void search(int need, int[] block) {
    List<Integer> set = new ClosureSearch(need, block, succession, eligibility).find();
    if (set.isEmpty()) {
      settleLike(need, block);
    } else {
      add(set);
    }
  }

  private void settleLike(int need, int[] block) {
    for (int other : block) {
      boolean alike =
          succession.slot(need) == succession.slot(other)
              && eligibility.of(need) == eligibility.of(other);
      if (alike) {
        settled.set(other);
      }
    }
  }

  private void add(List<Integer> set) {
    found.add(set);
    set.forEach(settled::set);
  }
}
