package vestiary.allocation.celebrant;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import vestiary.vesting.MassId;

/** How good a division is, reckoned from the division alone, with no search and no solver. */
public final class Reckoning {

  private final Question question;
  private final Drive drive;

  public Reckoning(Question question) {
    this.question = question;
    this.drive = new Drive(question.journeys());
  }

  /** The levels of a division, which need not be a possible one. */
  public Levels levels(Map<MassId, PriestId> given) {
    long[] values = new long[Levels.ALL];
    for (MassToServe mass : question.masses()) {
      addMass(mass, Optional.ofNullable(given.get(mass.id())), values);
    }
    long worst = 0;
    for (Priest priest : question.priests()) {
      long share = share(priest, given);
      addDays(priest, given, values);
      worst = Math.max(worst, share);
      values[7] += share * share;
    }
    values[6] = worst;
    return Levels.of(values);
  }

  /** What a priest drives for some of his Masses, in minutes. */
  public long minutes(Priest priest, List<Stay> stays) {
    return drive.minutes(priest, stays);
  }

  private void addMass(MassToServe mass, Optional<PriestId> celebrant, long[] values) {
    if (celebrant.isEmpty()) {
      values[mass.occasion().comesFirst() ? 0 : 1]++;
      values[8] += mass.now().isEmpty() ? 0 : 1;
      return;
    }
    values[3] += isOther(mass.asked(), celebrant.get()) ? 1 : 0;
    values[4] += isOtherTongue(question.find(celebrant.get()).orElseThrow(), mass) ? 1 : 0;
    values[8] += mass.now().equals(List.of(celebrant.get())) ? 0 : 1;
  }

  private long share(Priest priest, Map<MassId, PriestId> given) {
    return question.engagements(priest).stream().mapToLong(Engagement::burden).sum()
        + his(priest, given).stream().mapToLong(mass -> question.burden(priest, mass)).sum();
  }

  private void addDays(Priest priest, Map<MassId, PriestId> given, long[] values) {
    Map<CountedDay, List<Stay>> stays = new TreeMap<>();
    Map<CountedDay, Integer> number = new TreeMap<>();
    for (Engagement one : question.engagements(priest)) {
      stays.computeIfAbsent(one.day(), none -> new ArrayList<>()).add(one.stay());
      number.merge(one.day(), one.counts() ? 1 : 0, Integer::sum);
    }
    for (MassToServe mass : his(priest, given)) {
      stays.computeIfAbsent(mass.day(), none -> new ArrayList<>()).add(mass.stay());
      number.merge(mass.day(), 1, Integer::sum);
    }
    number.forEach((day, masses) -> values[2] += beyondOne(day, masses));
    stays.values().forEach(day -> values[5] += drive.minutes(priest, day));
  }

  private List<MassToServe> his(Priest priest, Map<MassId, PriestId> given) {
    return question.masses().stream()
        .filter(mass -> priest.id().equals(given.get(mass.id())))
        .toList();
  }

  /** 1 for the first Mass beyond what the law allows, 2 more for the second, and so on. */
  static long beyondOne(CountedDay day, int masses) {
    long beyond = Math.max(0, masses - day.byLaw());
    return beyond * (beyond + 1) / 2;
  }

  static boolean isOther(List<PriestId> wanted, PriestId celebrant) {
    return !wanted.isEmpty() && !wanted.contains(celebrant);
  }

  static boolean isOtherTongue(Priest priest, MassToServe mass) {
    return !priest.celebratesIn(mass.language());
  }
}
