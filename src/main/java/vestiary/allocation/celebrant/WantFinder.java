package vestiary.allocation.celebrant;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import vestiary.vesting.MassId;

/**
 * Finds a short proof that a Mass which nobody takes cannot be served. From the Mass it goes to
 * whoever could take it, to all that these celebrate in the division at hand, to whoever could take
 * one of those, and so on; what is reached is tied together, and of it as much is left out as
 * leaves the proof standing.
 */
final class WantFinder {

  static final int MOST_STEPS = 200_000;

  private final Question question;
  private final Map<MassId, PriestId> given;
  private final Capacity capacity;

  WantFinder(Question question, Map<MassId, PriestId> given) {
    this.question = question;
    this.given = given;
    this.capacity = new Capacity(question);
  }

  Want of(MassToServe unserved) {
    List<MassToServe> tied = tied(unserved);
    if (capacity.of(tied) < tied.size()) {
      return want(
          unserved,
          shortened(tied, unserved, some -> capacity.of(some) < some.size()),
          Want.Ground.COUNTED);
    }
    if (isImpossible(tied)) {
      // Of what is left the sum may show it although it did not of the whole.
      List<MassToServe> few = shortened(tied, unserved, this::isImpossible);
      boolean counted = capacity.of(few) < few.size();
      return want(unserved, few, counted ? Want.Ground.COUNTED : Want.Ground.TRIED);
    }
    return want(unserved, List.of(unserved), Want.Ground.SEARCHED);
  }

  private boolean isImpossible(Collection<MassToServe> masses) {
    return capacity.tryAll(masses, MOST_STEPS) == Capacity.Tried.IMPOSSIBLE;
  }

  private List<MassToServe> tied(MassToServe unserved) {
    Set<MassToServe> reached = new LinkedHashSet<>(List.of(unserved));
    Deque<MassToServe> next = new ArrayDeque<>(reached);
    while (!next.isEmpty()) {
      for (PriestId priest : capacity.whoCould(List.of(next.remove()))) {
        for (MassToServe mass : question.masses()) {
          if (priest.equals(given.get(mass.id())) && isNear(mass, unserved) && reached.add(mass)) {
            next.add(mass);
          }
        }
      }
    }
    return reached.stream().sorted(MassToServe.BY_START).toList();
  }

  /** What a priest does days before or after stands in nobody's way. */
  private static boolean isNear(MassToServe mass, MassToServe unserved) {
    return mass.day().equals(unserved.day())
        || Math.abs(mass.stay().date().toEpochDay() - unserved.stay().date().toEpochDay()) <= 1;
  }

  private static List<MassToServe> shortened(
      List<MassToServe> masses, MassToServe kept, Predicate<Collection<MassToServe>> holds) {
    List<MassToServe> left = new ArrayList<>(masses);
    for (MassToServe mass : masses) {
      if (!mass.equals(kept)) {
        left.remove(mass);
        if (!holds.test(left)) {
          left.add(mass);
        }
      }
    }
    return left.stream().sorted(MassToServe.BY_START).toList();
  }

  private Want want(MassToServe unserved, List<MassToServe> masses, Want.Ground ground) {
    return new Want(
        unserved.id(),
        masses.stream().map(MassToServe::id).toList(),
        question.priests().stream()
            .map(priest -> new Want.Most(priest.id(), capacity.of(priest, masses)))
            .filter(most -> most.masses() > 0)
            .toList(),
        ground);
  }
}
