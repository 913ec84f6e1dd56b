package vestiary.allocation.planner;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import vestiary.allocation.flow.Ask;
import vestiary.allocation.plan.Ride;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;

/**
 * How many carriages there must be whatever is done: one into each church where a Mass asks for
 * more pieces than lie there, if nobody travels there anyway. A modest bound, and counted at once.
 */
final class LeastCarriages {

  private record Asking(MassId mass, ChurchId church, Ask ask) {}

  private LeastCarriages() {}

  /** 0 also where not everything can be met as it is asked, since then nothing need be brought. */
  static long of(Situation situation, List<Need> open, List<DayCoverage> coverage) {
    boolean wanting =
        coverage.stream().anyMatch(day -> Arrays.stream(day.values()).anyMatch(n -> n > 0));
    if (wanting) {
      return 0;
    }
    Map<Asking, Long> asked =
        open.stream()
            .collect(
                Collectors.groupingBy(
                    need -> new Asking(need.mass(), need.church(), Ask.of(need, situation)),
                    Collectors.counting()));
    Set<ChurchId> visited =
        situation.rides().stream().map(Ride::to).collect(Collectors.toCollection(HashSet::new));
    return asked.entrySet().stream()
        .filter(e -> !visited.contains(e.getKey().church()))
        .filter(e -> e.getValue() > lying(e.getKey(), situation))
        .map(e -> e.getKey().church())
        .distinct()
        .count();
  }

  private static long lying(Asking asking, Situation situation) {
    return situation.span().pieces().stream()
        .filter(piece -> situation.start(piece).equals(asking.church()))
        .filter(piece -> asking.ask().depth(piece, situation.traits(piece)) == 0)
        .count();
  }
}
