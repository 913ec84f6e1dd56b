package vestiary.allocation.flow;

import java.util.List;
import java.util.Optional;
import vestiary.vesting.MassId;

/**
 * Items that may stand in for one another while they are free: they serve the same, and must be at
 * the same place and time in the end, if anywhere.
 *
 * @param classes those of the pieces that serve something, in order of kind, one or two
 * @param bound the only church they serve, or -1 if they may be carried
 * @param keptFrom Masses that they may not serve, in order
 * @param burden how little people like that one of them is carried, each journey
 * @param due where they must all be in the end; empty list if they are free for good
 */
record Commodity(
    List<Integer> classes,
    int bound,
    List<MassId> keptFrom,
    int burden,
    List<Visit> due,
    List<Supply> supplies) {

  Commodity {
    classes = List.copyOf(classes);
    keptFrom = List.copyOf(keptFrom);
    due = List.copyOf(due);
    supplies = List.copyOf(supplies);
  }

  boolean mayBeCarried() {
    return bound < 0;
  }

  Optional<Visit> findDue() {
    return due.stream().findFirst();
  }

  /** Whether it must be somewhere else in the end than it is in the beginning. */
  boolean mustTravel() {
    return due.stream()
        .anyMatch(end -> supplies.stream().anyMatch(s -> s.after().place() != end.place()));
  }

  int size() {
    return supplies.stream().mapToInt(Supply::size).sum();
  }
}
