package vestiary.people;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.UUID;

/**
 * Who is there when.
 *
 * @param absences of all people, in the time that is looked at
 * @param celebrants priests and bishops of the cluster; whoever comes from outside is not counted
 *     on
 * @param arrivals of those who come from outside, as far as they were said
 */
public record Attendance(List<Absence> absences, List<Person> celebrants, List<Arrival> arrivals) {

  public Attendance {
    absences = List.copyOf(absences);
    celebrants = List.copyOf(celebrants);
    arrivals = List.copyOf(arrivals);
  }

  /**
   * A time without anybody who can celebrate.
   *
   * @param until not included
   */
  public record Gap(Instant from, Instant until) {}

  /** What keeps a person away at any moment of that time; empty if nothing does. */
  public Optional<Absence> find(UUID person, Instant from, Instant until) {
    return absences.stream()
        .filter(one -> one.person().equals(person) && one.meets(from, until))
        .findFirst();
  }

  /** Who comes to that Mass from outside and has said when, by the hour. */
  public List<Arrival> to(UUID mass) {
    return arrivals.stream().filter(one -> one.mass().equals(mass)).toList();
  }

  /** Whether all who can celebrate are away at one and the same moment of that time. */
  public boolean isNobodyLeft(Instant from, Instant until) {
    return !gaps(from, until).isEmpty();
  }

  /**
   * When nobody who can celebrate is there, by time and each as long as it can be; none of a
   * cluster that has no celebrant of its own.
   */
  public List<Gap> gaps(Instant from, Instant until) {
    List<Gap> gaps = new ArrayList<>();
    List<Instant> turns = turns(from, until);
    for (int i = 0; i + 1 < turns.size(); i++) {
      Instant begin = turns.get(i);
      Instant end = turns.get(i + 1);
      if (isEverybodyAway(begin, end)) {
        boolean goesOn = !gaps.isEmpty() && gaps.get(gaps.size() - 1).until().equals(begin);
        gaps.add(new Gap(goesOn ? gaps.remove(gaps.size() - 1).from() : begin, end));
      }
    }
    return gaps;
  }

  /** Between two of these, nobody comes or goes. */
  private List<Instant> turns(Instant from, Instant until) {
    TreeSet<Instant> turns = new TreeSet<>(List.of(from, until));
    for (Absence one : absences) {
      for (Instant turn : List.of(one.from(), one.to())) {
        if (turn.isAfter(from) && turn.isBefore(until)) {
          turns.add(turn);
        }
      }
    }
    return List.copyOf(turns);
  }

  private boolean isEverybodyAway(Instant from, Instant until) {
    return !celebrants.isEmpty()
        && celebrants.stream().allMatch(person -> find(person.id(), from, until).isPresent());
  }
}
