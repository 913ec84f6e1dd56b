package vestiary.allocation.celebrant;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * All that each priest could be given on each counted day. Since nobody may celebrate more than
 * three times a day these are few: at most the cube of the Masses of a day, and far fewer where
 * roads are long.
 */
final class Duties {

  /** Of one priest on one day; beyond that a division is a good one and not proven the best. */
  private static final int MOST = 20_000;

  private final Question question;
  private final Drive drive;
  private final List<Duty> found = new ArrayList<>();
  private boolean complete = true;

  private Duties(Question question) {
    this.question = question;
    this.drive = new Drive(question.journeys());
  }

  static Duties of(Question question) {
    Duties duties = new Duties(question);
    Map<CountedDay, List<MassToServe>> byDay =
        question.masses().stream()
            .collect(Collectors.groupingBy(MassToServe::day, TreeMap::new, Collectors.toList()));
    for (Priest priest : question.priests()) {
      Timetable engaged = new Timetable(question, priest);
      byDay.forEach((day, masses) -> duties.ofDay(priest, engaged, day, masses));
    }
    return duties;
  }

  List<Duty> all() {
    return found;
  }

  /** Whether none was left out. */
  boolean areComplete() {
    return complete;
  }

  private void ofDay(Priest priest, Timetable engaged, CountedDay day, List<MassToServe> masses) {
    List<MassToServe> possible =
        masses.stream().filter(mass -> engaged.findWhyNot(mass).isEmpty()).toList();
    if (possible.isEmpty()) {
      return;
    }
    List<Engagement> fixed =
        question.engagements(priest).stream().filter(one -> one.day().equals(day)).toList();
    new OfOneDay(priest, day, fixed, possible).enter();
  }

  private final class OfOneDay {

    private final Priest priest;
    private final CountedDay day;
    private final List<Engagement> fixed;
    private final List<MassToServe> possible;
    private final int counted;
    private final int most;
    private final int first = found.size();

    OfOneDay(Priest priest, CountedDay day, List<Engagement> fixed, List<MassToServe> possible) {
      this.priest = priest;
      this.day = day;
      this.fixed = fixed;
      this.possible = possible;
      this.counted = (int) fixed.stream().filter(Engagement::counts).count();
      this.most = priest.most(day) - counted;
    }

    void enter() {
      found.add(duty(List.of()));
      extend(List.of(), 0);
    }

    private void extend(List<MassToServe> chain, int from) {
      for (int place = from; chain.size() < most && place < possible.size(); place++) {
        MassToServe next = possible.get(place);
        if (chain.isEmpty() || follows(chain.get(chain.size() - 1), next)) {
          if (found.size() - first >= MOST) {
            complete = false;
            return;
          }
          List<MassToServe> longer = Stream.concat(chain.stream(), Stream.of(next)).toList();
          found.add(duty(longer));
          extend(longer, place + 1);
        }
      }
    }

    private boolean follows(MassToServe one, MassToServe other) {
      return question.pace().follows(one.stay(), other.stay(), question.journeys());
    }

    private Duty duty(List<MassToServe> masses) {
      List<Stay> stays =
          Stream.concat(
                  fixed.stream().map(Engagement::stay), masses.stream().map(MassToServe::stay))
              .toList();
      long[] costs = {
        0,
        0,
        Reckoning.beyondOne(day, counted + masses.size()),
        masses.stream().filter(mass -> Reckoning.isOther(mass.asked(), priest.id())).count(),
        masses.stream().filter(mass -> Reckoning.isOtherTongue(priest, mass)).count(),
        drive.minutes(priest, stays)
      };
      return new Duty(
          priest,
          day,
          masses,
          costs,
          masses.stream().mapToLong(mass -> question.burden(priest, mass)).sum(),
          masses.stream().filter(mass -> !mass.now().equals(List.of(priest.id()))).count());
    }
  }
}
