package vestiary.allocation.celebrant;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Masses of two counted days, each of which is too close for one priest to each of the other day:
 * of all duties that have any of them he can take one. One such row says more to the relaxation
 * than a row for each two Masses, and is why it is nearly always whole over a Saturday evening.
 *
 * <p>Source: clique inequalities of the stable set problem, as in any textbook of integer
 * programming.
 */
record Clique(PriestId priest, Set<MassToServe> ones, Set<MassToServe> others) {

  private record Tie(PriestId priest, CountedDay day, CountedDay next) {}

  /** Which hold every crossing, and none of which lies within another of the same days. */
  static Set<Clique> all(List<Crossing> crossings) {
    Map<Tie, Map<MassToServe, Set<MassToServe>>> near = new LinkedHashMap<>();
    for (Crossing crossing : crossings) {
      link(near, crossing.priest(), crossing.one(), crossing.other());
      link(near, crossing.priest(), crossing.other(), crossing.one());
    }
    Set<Clique> all = new LinkedHashSet<>();
    near.forEach((tie, beside) -> beside.values().forEach(set -> all.add(of(tie, beside, set))));
    return all;
  }

  private static void link(
      Map<Tie, Map<MassToServe, Set<MassToServe>>> near,
      Priest priest,
      MassToServe one,
      MassToServe other) {
    near.computeIfAbsent(
            new Tie(priest.id(), one.day(), other.day()), none -> new LinkedHashMap<>())
        .computeIfAbsent(one, none -> new LinkedHashSet<>())
        .add(other);
  }

  /** With all that are too close to each of these; whichever day is looked from, the same one. */
  private static Clique of(
      Tie tie, Map<MassToServe, Set<MassToServe>> beside, Set<MassToServe> these) {
    Set<MassToServe> close =
        beside.keySet().stream()
            .filter(mass -> beside.get(mass).containsAll(these))
            .collect(Collectors.toCollection(LinkedHashSet::new));
    return tie.day().compareTo(tie.next()) < 0
        ? new Clique(tie.priest(), close, these)
        : new Clique(tie.priest(), these, close);
  }

  boolean holds(Duty duty) {
    return duty.priest().id().equals(priest)
        && (hasAny(duty.masses(), ones) || hasAny(duty.masses(), others));
  }

  private static boolean hasAny(Collection<MassToServe> masses, Set<MassToServe> some) {
    return !Collections.disjoint(masses, some);
  }
}
