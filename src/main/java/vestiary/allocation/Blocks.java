package vestiary.allocation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Cuts needs into parts that have nothing to do with one another: no piece in common, even through
 * others, or a night between them that is longer than every journey. A set of clashing needs from
 * which none can be left out lies within one block.
 */
final class Blocks {

  private final Succession succession;
  private final Eligibility eligibility;

  Blocks(Succession succession, Eligibility eligibility) {
    this.succession = succession;
    this.eligibility = eligibility;
  }

  /** The blocks, each in ascending order. */
  List<int[]> of(List<Integer> needs) {
    return bySharedPieces(needs).flatMap(this::byNights).toList();
  }

  private Stream<List<Integer>> bySharedPieces(List<Integer> needs) {
    SharedPieces shared = new SharedPieces();
    needs.forEach(need -> shared.join(eligibility.of(need)));
    Map<Integer, List<Integer>> groups = new LinkedHashMap<>();
    for (int need : needs) {
      int group = shared.group(eligibility.of(need));
      groups.computeIfAbsent(group, unknown -> new ArrayList<>()).add(need);
    }
    return groups.values().stream();
  }

  private Stream<int[]> byNights(List<Integer> needs) {
    long longest =
        succession.noJourneyIsLonger(needs.stream().mapToInt(Integer::intValue).toArray());
    List<List<Integer>> days = new ArrayList<>();
    long free = Long.MAX_VALUE;
    for (int need : needs.stream().sorted(Comparator.comparing(succession::setOut)).toList()) {
      boolean night = days.isEmpty() || free + longest <= succession.setOut(need);
      if (night) {
        days.add(new ArrayList<>());
      }
      free = night ? succession.cleared(need) : Math.max(free, succession.cleared(need));
      days.get(days.size() - 1).add(need);
    }
    return days.stream().map(day -> day.stream().mapToInt(Integer::intValue).sorted().toArray());
  }
}
