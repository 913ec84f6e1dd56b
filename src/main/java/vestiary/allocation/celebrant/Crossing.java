package vestiary.allocation.celebrant;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Two Masses that count on different days and are too close for one priest: one late in the
 * afternoon that is Saturday's, and one in the evening that is Sunday's.
 */
record Crossing(Priest priest, MassToServe one, MassToServe other) {

  /** All there are among some duties. */
  static List<Crossing> all(Question question, List<Duty> duties) {
    Map<PriestId, Set<MassToServe>> possible = new TreeMap<>();
    for (Duty duty : duties) {
      if (duty.masses().size() == 1) {
        possible
            .computeIfAbsent(duty.priest().id(), none -> new LinkedHashSet<>())
            .add(duty.masses().get(0));
      }
    }
    List<Crossing> all = new ArrayList<>();
    possible.forEach(
        (id, masses) -> of(question, question.find(id).orElseThrow(), sorted(masses), all));
    return all;
  }

  private static List<MassToServe> sorted(Set<MassToServe> masses) {
    return masses.stream().sorted(MassToServe.BY_START).toList();
  }

  private static void of(
      Question question, Priest priest, List<MassToServe> masses, List<Crossing> all) {
    for (int first = 0; first < masses.size(); first++) {
      MassToServe one = masses.get(first);
      for (int second = first + 1;
          second < masses.size() && isNear(one, masses.get(second));
          second++) {
        MassToServe other = masses.get(second);
        if (!one.day().equals(other.day())
            && !question.pace().goTogether(one.stay(), other.stay(), question.journeys())) {
          all.add(new Crossing(priest, one, other));
        }
      }
    }
  }

  private static boolean isNear(MassToServe one, MassToServe other) {
    return other.stay().start().isBefore(one.stay().end().plus(Pace.A_DAY));
  }
}
