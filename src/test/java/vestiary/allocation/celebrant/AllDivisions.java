package vestiary.allocation.celebrant;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import vestiary.vesting.ChurchId;

/**
 * The best division found by trying each, judged by rules and measures written down a second time.
 */
final class AllDivisions {

  private final Question question;
  private final int[] celebrants;
  private List<Long> best = List.of();

  private AllDivisions(Question question) {
    this.question = question;
    this.celebrants = new int[question.masses().size()];
  }

  static List<Long> best(Question question) {
    AllDivisions all = new AllDivisions(question);
    all.tryFrom(0);
    return all.best;
  }

  private void tryFrom(int mass) {
    if (mass == celebrants.length) {
      if (isPossible()) {
        List<Long> levels = levels();
        best = best.isEmpty() || isLess(levels, best) ? levels : best;
      }
      return;
    }
    for (int priest = -1; priest < question.priests().size(); priest++) {
      celebrants[mass] = priest;
      tryFrom(mass + 1);
    }
  }

  private static boolean isLess(List<Long> one, List<Long> other) {
    for (int level = 0; level < one.size(); level++) {
      int order = one.get(level).compareTo(other.get(level));
      if (order != 0) {
        return order < 0;
      }
    }
    return false;
  }

  private record Deed(Stay stay, CountedDay day, boolean counts, boolean open) {}

  private List<Deed> deeds(int priest) {
    List<Deed> deeds = new ArrayList<>();
    for (Engagement one : question.engagements()) {
      if (one.priest().equals(question.priests().get(priest).id())) {
        deeds.add(new Deed(one.stay(), one.day(), one.counts(), false));
      }
    }
    for (int mass = 0; mass < celebrants.length; mass++) {
      if (celebrants[mass] == priest) {
        MassToServe given = question.masses().get(mass);
        deeds.add(new Deed(given.stay(), given.day(), true, true));
      }
    }
    deeds.sort(Comparator.comparing(deed -> deed.stay().start()));
    return deeds;
  }

  private boolean isPossible() {
    for (int priest = 0; priest < question.priests().size(); priest++) {
      Priest he = question.priests().get(priest);
      List<Deed> deeds = deeds(priest);
      for (Deed deed : deeds) {
        if (deed.open() && !isPossible(he, deed, deeds)) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean isPossible(Priest priest, Deed deed, List<Deed> deeds) {
    int thatDay = 0;
    for (Deed other : deeds) {
      thatDay += other.counts() && other.day().equals(deed.day()) ? 1 : 0;
      if (other != deed
          && !isReached(deed.stay(), other.stay())
          && !isReached(other.stay(), deed.stay())) {
        return false;
      }
    }
    int leave = deed.day().obliges() ? priest.permitted().sunday() : priest.permitted().weekday();
    boolean away =
        priest.absences().stream()
            .anyMatch(
                absence ->
                    absence.from().isBefore(deed.stay().end())
                        && absence.until().isAfter(deed.stay().start()));
    boolean his = priest.churches().isEmpty() || priest.churches().contains(deed.stay().church());
    return !away
        && his
        && thatDay <= Math.min(priest.mostADay(), Math.max(leave, deed.day().byLaw()));
  }

  private boolean isReached(Stay first, Stay second) {
    if (Duration.between(first.end(), second.start()).toHours() >= 24) {
      return true;
    }
    Optional<Duration> way = question.journeys().find(first.church(), second.church());
    if (way.isEmpty()) {
      return false;
    }
    Instant ready = first.end().plus(way.get()).plus(Duration.ofMinutes(30));
    Instant apart = first.start().plus(Duration.ofMinutes(90));
    return !second.start().isBefore(ready) && !second.start().isBefore(apart);
  }

  private List<Long> levels() {
    long[] level = new long[9];
    for (int place = 0; place < celebrants.length; place++) {
      MassToServe mass = question.masses().get(place);
      if (celebrants[place] < 0) {
        level[mass.occasion() == Occasion.OTHER ? 1 : 0]++;
        level[8] += mass.now().size();
      } else {
        Priest priest = question.priests().get(celebrants[place]);
        boolean asked = mass.asked().isEmpty() || mass.asked().get(0).equals(priest.id());
        level[3] += asked ? 0 : 1;
        boolean speaks = mass.language().isEmpty() || priest.languages().contains(mass.language());
        level[4] += speaks ? 0 : 1;
        level[8] += mass.now().contains(priest.id()) ? 0 : 1;
      }
    }
    for (int priest = 0; priest < question.priests().size(); priest++) {
      addPriest(priest, level);
    }
    List<Long> values = new ArrayList<>();
    for (long value : level) {
      values.add(value);
    }
    return values;
  }

  private void addPriest(int priest, long[] level) {
    Priest he = question.priests().get(priest);
    Map<CountedDay, Integer> number = new HashMap<>();
    Map<List<Object>, List<ChurchId>> roads = new HashMap<>();
    for (Deed deed : deeds(priest)) {
      number.merge(deed.day(), deed.counts() ? 1 : 0, Integer::sum);
      LocalDate date = deed.stay().date();
      roads
          .computeIfAbsent(List.of(deed.day(), date), none -> new ArrayList<>())
          .add(deed.stay().church());
    }
    number.forEach(
        (day, masses) -> {
          for (int more = 1; more <= masses - day.byLaw(); more++) {
            level[2] += more;
          }
        });
    roads.values().forEach(road -> level[5] += minutes(he, road));
    long share = share(priest, he);
    level[6] = Math.max(level[6], share);
    level[7] += share * share;
  }

  private long minutes(Priest priest, List<ChurchId> churches) {
    List<ChurchId> road = new ArrayList<>(churches);
    priest.homes().forEach(home -> road.add(0, home));
    road.addAll(priest.homes());
    long minutes = 0;
    for (int place = 1; place < road.size(); place++) {
      minutes +=
          question
              .journeys()
              .find(road.get(place - 1), road.get(place))
              .map(Duration::toMinutes)
              .orElse(0L);
    }
    return minutes;
  }

  private long share(int priest, Priest he) {
    long share = 0;
    for (Engagement one : question.engagements()) {
      share += one.priest().equals(he.id()) ? one.burden() : 0;
    }
    for (int mass = 0; mass < celebrants.length; mass++) {
      if (celebrants[mass] == priest) {
        MassToServe given = question.masses().get(mass);
        boolean far =
            he.homes().stream()
                .flatMap(home -> question.journeys().find(home, given.stay().church()).stream())
                .anyMatch(way -> way.toMinutes() >= 25);
        share += (given.early() ? 1 : 0) + (far ? 1 : 0);
      }
    }
    return share;
  }
}
