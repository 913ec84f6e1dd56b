package vestiary.allocation.celebrant;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * How many of some Masses one priest could take, had he no others: day by day the longest chain of
 * Masses that he can be at one after the other, cut off at what he may celebrate. What follows what
 * is a partial order, since no detour is quicker, so the longest chain needs no search.
 */
final class Capacity {

  private final Question question;
  private final Map<PriestId, Timetable> engaged;

  Capacity(Question question) {
    this.question = question;
    this.engaged = Timetable.all(question, Map.of());
  }

  /** Whether he could take a Mass, had he nothing but his engagements. */
  boolean canTake(Priest priest, MassToServe mass) {
    return engaged.get(priest.id()).findWhyNot(mass).isEmpty();
  }

  /** At most so many of these; he may be able to take fewer where days touch. */
  int of(Priest priest, Collection<MassToServe> masses) {
    Map<CountedDay, List<MassToServe>> byDay =
        masses.stream()
            .filter(mass -> canTake(priest, mass))
            .sorted(MassToServe.BY_START)
            .collect(Collectors.groupingBy(MassToServe::day, TreeMap::new, Collectors.toList()));
    return byDay.entrySet().stream()
        .mapToInt(day -> Math.min(left(priest, day.getKey()), longestChain(day.getValue())))
        .sum();
  }

  /** What all of them could take together, at most. */
  int of(Collection<MassToServe> masses) {
    return question.priests().stream().mapToInt(priest -> of(priest, masses)).sum();
  }

  private int left(Priest priest, CountedDay day) {
    long counted =
        question.engagements(priest).stream()
            .filter(one -> one.counts() && one.day().equals(day))
            .count();
    return (int) Math.max(0, priest.most(day) - counted);
  }

  private int longestChain(List<MassToServe> masses) {
    int[] longest = new int[masses.size()];
    int best = 0;
    for (int last = 0; last < longest.length; last++) {
      for (int before = 0; before < last; before++) {
        if (follows(masses.get(before), masses.get(last))) {
          longest[last] = Math.max(longest[last], longest[before]);
        }
      }
      best = Math.max(best, ++longest[last]);
    }
    return best;
  }

  private boolean follows(MassToServe one, MassToServe other) {
    return question.pace().follows(one.stay(), other.stay(), question.journeys());
  }

  /**
   * Whether all of these can be given to priests at once, tried one way after another.
   *
   * @param steps after which it is given up
   */
  Tried tryAll(Collection<MassToServe> masses, int steps) {
    return new Trying(masses.stream().sorted(MassToServe.BY_START).toList(), steps).run();
  }

  enum Tried {
    POSSIBLE,
    IMPOSSIBLE,
    GIVEN_UP
  }

  private final class Trying {

    private final List<MassToServe> masses;
    private final Map<PriestId, List<MassToServe>> given = new HashMap<>();
    private int steps;

    Trying(List<MassToServe> masses, int steps) {
      this.masses = masses;
      this.steps = steps;
      question.priests().forEach(priest -> given.put(priest.id(), new ArrayList<>()));
    }

    Tried run() {
      boolean possible = serveFrom(0);
      return possible ? Tried.POSSIBLE : steps < 0 ? Tried.GIVEN_UP : Tried.IMPOSSIBLE;
    }

    private boolean serveFrom(int place) {
      if (place == masses.size()) {
        return true;
      }
      MassToServe mass = masses.get(place);
      for (Priest priest : question.priests()) {
        List<MassToServe> his = given.get(priest.id());
        if (steps-- < 0) {
          return false;
        }
        if (canTakeAfter(priest, mass, his)) {
          his.add(mass);
          if (serveFrom(place + 1)) {
            return true;
          }
          his.remove(his.size() - 1);
        }
      }
      return false;
    }

    private boolean canTakeAfter(Priest priest, MassToServe mass, List<MassToServe> his) {
      long thatDay = his.stream().filter(one -> one.day().equals(mass.day())).count();
      return canTake(priest, mass)
          && thatDay < left(priest, mass.day())
          && (his.isEmpty() || follows(his.get(his.size() - 1), mass));
    }
  }

  /** Of these Masses those that some priest could take, had he nothing else. */
  Set<PriestId> whoCould(Collection<MassToServe> masses) {
    return question.priests().stream()
        .filter(priest -> masses.stream().anyMatch(mass -> canTake(priest, mass)))
        .map(Priest::id)
        .collect(Collectors.toSet());
  }
}
