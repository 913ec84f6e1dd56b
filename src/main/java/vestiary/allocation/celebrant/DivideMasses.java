package vestiary.allocation.celebrant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import vestiary.allocation.solver.Answer;
import vestiary.allocation.solver.Solver;
import vestiary.allocation.solver.Work;
import vestiary.vesting.MassId;

/**
 * Divides Masses among priests: level by level the best there is, each among the best by those
 * before it. What is settled Mass by Mass is settled day by day; then the fair shares and the
 * fewest changes over all days at once. The same question gets the same answer.
 */
public final class DivideMasses {

  /** Of the work that is left, what one stretch of days may take. */
  private static final double SHARE = 0.5;

  private final Question question;
  private final Solver solver;
  private double left;
  private boolean proven = true;

  private DivideMasses(Question question, Solver solver, double units) {
    this.question = question;
    this.solver = solver;
    this.left = units;
  }

  /**
   * The best division that the work allows, with its bounds.
   *
   * @param work in units, about a second of one core each
   */
  public static Proposal divide(Question question, Solver solver, Work work) {
    return new DivideMasses(question, solver, work.units()).run(work);
  }

  private Proposal run(Work work) {
    Duties duties = Duties.of(question);
    List<Choice> stretches = stretches(duties.all());
    long[] gaps = new long[Levels.ALL];
    Map<MassId, PriestId> given = new HashMap<>();
    List<Answer> answers = new ArrayList<>();
    for (Choice stretch : stretches) {
      Answer answer = settle(stretch, work);
      given.putAll(stretch.given(answer.columns()));
      answers.add(answer);
      note(answer, gaps);
    }
    Map<MassId, PriestId> best = shared(duties.all(), stretches, answers, given, gaps, work);
    return proposal(best, gaps, duties.areComplete());
  }

  /** Days that no priest's road ties together are settled each by itself. */
  private List<Choice> stretches(List<Duty> duties) {
    Map<CountedDay, Set<CountedDay>> tied = new TreeMap<>();
    duties.forEach(duty -> tied.computeIfAbsent(duty.day(), day -> new HashSet<>(List.of(day))));
    for (Crossing crossing : Crossing.all(question, duties)) {
      Set<CountedDay> both = new HashSet<>(tied.get(crossing.one().day()));
      both.addAll(tied.get(crossing.other().day()));
      both.forEach(day -> tied.put(day, both));
    }
    Set<Set<CountedDay>> stretches = new LinkedHashSet<>(tied.values());
    return stretches.stream().map(days -> choice(days, duties)).toList();
  }

  private Choice choice(Set<CountedDay> days, List<Duty> duties) {
    return new Choice(
        question,
        duties.stream().filter(duty -> days.contains(duty.day())).toList(),
        question.masses().stream().filter(mass -> days.contains(mass.day())).toList());
  }

  private Answer settle(Choice stretch, Work work) {
    long[] start = stretch.values(asNow(stretch));
    List<long[]> tiers = stretch.tiers();
    Answer answer =
        solver.minimise(
            stretch.program(), tiers, start, new Work(left * SHARE, work.isCancelled()));
    left -= answer.work();
    return answer.isFound() ? answer : Answer.of(start, tiers);
  }

  /** Whoever is named now, as long as he can take all that is his on a day. */
  private Map<MassId, PriestId> asNow(Choice stretch) {
    Map<MassId, PriestId> given = new LinkedHashMap<>();
    for (Duty duty : stretch.duties()) {
      boolean his = duty.masses().stream().allMatch(mass -> isNow(duty, mass));
      if (his && duty.masses().size() == ofNow(stretch, duty)) {
        duty.masses().forEach(mass -> given.put(mass.id(), duty.priest().id()));
      }
    }
    long[] values = stretch.values(given);
    return stretch.program().admits(values) ? given : Map.of();
  }

  private static boolean isNow(Duty duty, MassToServe mass) {
    return mass.now().contains(duty.priest().id());
  }

  private long ofNow(Choice stretch, Duty duty) {
    return question.masses().stream()
        .filter(mass -> mass.day().equals(duty.day()) && isNow(duty, mass))
        .count();
  }

  private void note(Answer answer, long[] gaps) {
    for (int level = 0; level < answer.values().length; level++) {
      gaps[level] += answer.values()[level] - answer.bounds()[level];
    }
    proven &= answer.isProven();
  }

  /** The fairest shares and then the fewest changes among divisions that are as good day by day. */
  private Map<MassId, PriestId> shared(
      List<Duty> duties,
      List<Choice> stretches,
      List<Answer> answers,
      Map<MassId, PriestId> given,
      long[] gaps,
      Work work) {
    if (duties.isEmpty()) {
      return given;
    }
    Shares shares = new Shares(question, duties, given);
    for (int place = 0; place < stretches.size(); place++) {
      shares.keep(stretches.get(place), answers.get(place));
    }
    Answer answer =
        solver.minimise(
            shares.program(), shares.tiers(), shares.start(), new Work(left, work.isCancelled()));
    if (!answer.isFound()) {
      answer = Answer.of(shares.start(), shares.tiers());
    }
    for (int level = 0; level < answer.values().length; level++) {
      gaps[Levels.BY_DUTY + level] = answer.values()[level] - answer.bounds()[level];
    }
    proven &= answer.isProven();
    return shares.given(answer.columns());
  }

  private Proposal proposal(Map<MassId, PriestId> given, long[] gaps, boolean complete) {
    Levels values = new Reckoning(question).levels(given);
    long[] bounds = new long[Levels.ALL];
    boolean sure = complete;
    for (int level = 0; level < Levels.ALL; level++) {
      long value = values.asList().get(level);
      bounds[level] = sure ? Math.max(0, value - gaps[level]) : 0;
      sure &= gaps[level] == 0;
    }
    WantFinder wants = new WantFinder(question, given);
    return new Proposal(
        given,
        values,
        Levels.of(bounds),
        proven && complete,
        question.masses().stream()
            .filter(mass -> !given.containsKey(mass.id()))
            .map(wants::of)
            .toList());
  }
}
