package vestiary.allocation.planner;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import vestiary.allocation.flow.Ask;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.MassId;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Step;

/** What provisions come to, counted. */
final class Tally {

  private record Stepping(MassId mass, Role role, Step step, int depth) {}

  private Tally() {}

  /** Unmet needs of principal celebrants, others that must be met, all others. */
  static List<Long> unmet(Collection<Provision> provisions) {
    long[] unmet = new long[3];
    provisions.stream()
        .filter(Provision.Unmet.class::isInstance)
        .map(Provision::need)
        .forEach(n -> unmet[n.role() == Role.PRINCIPAL ? 0 : n.isMust() ? 1 : 2]++);
    return List.of(unmet[0], unmet[1], unmet[2]);
  }

  /**
   * Persons with a third substitute or a deeper one, a second, a first. A person whose chasuble and
   * stole both step down the same way counts once.
   */
  static List<Long> steps(Collection<? extends Provision> provisions) {
    Map<Stepping, Map<PieceKind, Long>> persons = new HashMap<>();
    for (Provision one : provisions) {
      one.findStep()
          .ifPresent(
              step -> {
                Stepping key =
                    new Stepping(one.need().mass(), one.need().role(), step, one.depth());
                persons
                    .computeIfAbsent(key, unknown -> new HashMap<>())
                    .merge(one.need().kind(), 1L, Long::sum);
              });
    }
    long[] steps = new long[3];
    persons.forEach(
        (key, kinds) ->
            steps[3 - Math.min(3, key.depth())] +=
                kinds.values().stream().mapToLong(Long::longValue).max().orElse(0));
    return List.of(steps[0], steps[1], steps[2]);
  }

  /** How little people like what is worn, suits left aside. */
  static long displeasure(Collection<? extends Provision> provisions, Situation situation) {
    return provisions.stream()
        .filter(one -> one.findPiece().isPresent())
        .mapToLong(
            one ->
                Ask.of(one.need(), situation)
                    .displeasure(situation.traits(one.findPiece().orElseThrow())))
        .sum();
  }

  static List<Long> sum(List<Long> some, List<Long> others) {
    return IntStream.range(0, some.size()).mapToObj(at -> some.get(at) + others.get(at)).toList();
  }
}
