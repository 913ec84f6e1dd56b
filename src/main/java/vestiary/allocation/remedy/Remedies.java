package vestiary.allocation.remedy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import vestiary.allocation.ClashCheck;
import vestiary.allocation.Level;
import vestiary.allocation.Shortage;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.PlanProof;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Score;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.planner.Effort;
import vestiary.allocation.planner.Planner;
import vestiary.vesting.Need;

/**
 * Finds what mends a shortage. Nothing is offered that planning anew does not show to work: with
 * it, all of the days concerned are covered at least as well as without, and a shortage of the
 * cluster better.
 */
public final class Remedies {

  /** For each plan that tries a change out; enough for a real cluster's day. */
  private static final double WORK = 2;

  private final Planner planner;

  public Remedies(Planner planner) {
    this.planner = planner;
  }

  /**
   * What mends a shortage, best first: what leaves least unmet, then what is least trouble, then by
   * score.
   *
   * @param mostShift how much earlier or later a Mass may start
   */
  public List<Remedy> find(Shortage shortage, Situation situation, Duration mostShift) {
    Situation days = planner.around(shortage.needs(), situation);
    Plan without = planner.plan(days, Effort.of(WORK));
    List<Remedy> remedies = new ArrayList<>();
    for (Change change : new Candidates(shortage, days, mostShift).all()) {
      findRemedy(change, shortage, days, without).ifPresent(remedies::add);
    }
    return remedies.stream().sorted(Remedy.BY_COST).toList();
  }

  private Optional<Remedy> findRemedy(
      Change change, Shortage shortage, Situation days, Plan without) {
    Amended amended = Amended.by(change, days);
    Score coverage = planner.coverage(amended.situation());
    if (!helps(change, shortage, amended, without.score(), amended.with(coverage))) {
      return Optional.empty();
    }
    Plan with = planner.plan(amended.situation(), Effort.of(WORK));
    boolean holds =
        with.contradictions().isEmpty()
            && PlanProof.findObjections(with, amended.situation()).isEmpty();
    return holds
        ? Optional.of(
            new Remedy(
                change,
                without.score(),
                amended.with(with.score()),
                changed(without, with),
                with.movements()))
        : Optional.empty();
  }

  private static boolean helps(
      Change change, Shortage shortage, Amended amended, Score before, Score after) {
    int order = coverage(after).compareTo(coverage(before));
    boolean local = shortage.level() == Level.LOCAL;
    if (change instanceof Change.TakeStep || change instanceof Change.Carry) {
      return local ? !leavesMore(after, before) : order <= 0;
    }
    return local ? order <= 0 && !isStillShort(shortage, amended.situation()) : order < 0;
  }

  private static boolean leavesMore(Score one, Score other) {
    return new Score(one.unmet(), List.of(), 0, 0, 0, 0)
            .compareTo(new Score(other.unmet(), List.of(), 0, 0, 0, 0))
        > 0;
  }

  private static boolean isStillShort(Shortage shortage, Situation situation) {
    return ClashCheck.find(situation.span()).stream()
        .filter(other -> other.pieceKind() == shortage.pieceKind())
        .anyMatch(other -> !Collections.disjoint(other.masses(), shortage.masses()));
  }

  private static Score coverage(Score score) {
    return new Score(score.unmet(), score.steps(), 0, 0, 0, 0);
  }

  private static List<Provision> changed(Plan without, Plan with) {
    Map<Need, Provision> before = new HashMap<>();
    without.provisions().forEach(provision -> before.put(provision.need(), provision));
    return with.provisions().stream()
        .filter(
            provision ->
                !provision
                    .findPiece()
                    .equals(
                        Optional.ofNullable(before.get(provision.need()))
                            .flatMap(Provision::findPiece)))
        .toList();
  }
}
