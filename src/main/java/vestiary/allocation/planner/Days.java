package vestiary.allocation.planner;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import vestiary.allocation.flow.Extent;
import vestiary.allocation.flow.Roads;
import vestiary.vesting.Need;

/**
 * Parts of a span between which there is a night longer than every journey, so that each piece that
 * served in one can serve in the next, wherever it was. What is met and what is substituted in one
 * part then has nothing to do with the others.
 *
 * @param needs in canonical order, one or more
 */
record Days(List<Need> needs, Extent extent) {

  /** The parts, in order of time. */
  static List<Days> of(Collection<Need> needs, Roads roads) {
    List<List<Need>> parts = new ArrayList<>();
    long free = Roads.NEVER;
    boolean apart = roads.leadBothWays();
    for (Need need :
        needs.stream().sorted(Comparator.comparing(n -> n.window().setOut())).toList()) {
      long cleared = Roads.ceiling(need.window().cleared());
      boolean night = apart && free + roads.longest() <= Roads.floor(need.window().setOut());
      if (parts.isEmpty() || night) {
        parts.add(new ArrayList<>());
        free = cleared;
      }
      free = Math.max(free, cleared);
      parts.get(parts.size() - 1).add(need);
    }
    return parts.stream()
        .map(part -> new Days(part.stream().sorted().toList(), extent(part, roads)))
        .toList();
  }

  private static Extent extent(List<Need> needs, Roads roads) {
    if (!roads.leadBothWays()) {
      return Extent.WHOLE;
    }
    long first =
        needs.stream().mapToLong(n -> Roads.floor(n.window().setOut())).min().orElseThrow();
    long last =
        needs.stream().mapToLong(n -> Roads.ceiling(n.window().cleared())).max().orElseThrow();
    return new Extent(first - roads.longest(), last + roads.longest(), true);
  }
}
