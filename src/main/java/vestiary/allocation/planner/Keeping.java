package vestiary.allocation.planner;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import vestiary.allocation.flow.Ask;
import vestiary.allocation.flow.Roads;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.PlanProof;
import vestiary.allocation.plan.PlanStatus;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Score;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.plan.Tally;
import vestiary.allocation.solver.Solver;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/**
 * Holds what was found against the last plan: where that, filled up with what is new, comes to the
 * same in all that weighs more than change, it is kept, name by name. A search by pieces that are
 * alike cannot see names.
 */
final class Keeping {

  private final Situation situation;
  private final Effort effort;
  private final Solver solver;
  private final Roads roads;

  Keeping(Situation situation, Effort effort, Solver solver) {
    this.situation = situation;
    this.effort = new Effort(effort.work(), effort.counting(), effort.isCancelled(), plan -> {});
    this.solver = solver;
    this.roads = Planning.roads(situation);
  }

  /** What was found, or a plan that is as good and changes less. */
  Plan keep(Plan found) {
    List<Provision> kept = kept();
    if (found.score().changes() == 0 || kept.isEmpty()) {
      return found;
    }
    Plan all = filledUp(kept, found);
    if (isAsGood(all, found)) {
      return all;
    }
    List<Provision> untouched = ofUntouchedDays(kept);
    Plan some = untouched.isEmpty() ? found : filledUp(untouched, found);
    if (some != found && isAsGood(some, found)) {
      return some;
    }
    return found.status() == PlanStatus.STOPPED && isTheLast(all) ? unlessTheSame(found) : found;
  }

  private Plan filledUp(List<Provision> kept, Plan found) {
    Plan plan =
        new Planning(situation, Settled.keeping(kept, situation, roads), effort, solver).plan();
    return new Plan(
        plan.provisions(), plan.movements(), plan.score(), found.bounds(), plan.contradictions());
  }

  private boolean isAsGood(Plan plan, Plan found) {
    return plan.score().compareTo(found.score()) <= 0
        && PlanProof.findObjections(plan, situation).isEmpty();
  }

  /** Whether nothing is worn but what was worn by the last plan. */
  private boolean isTheLast(Plan plan) {
    Set<Need> known = new HashSet<>();
    situation.last().forEach(was -> known.add(was.need()));
    return plan.score().changes() == 0
        && plan.assignments().stream().allMatch(one -> known.contains(one.need()));
  }

  /**
   * A search that was stopped may by luck find better the second time. If without the last plan it
   * comes to that very plan again, nothing has changed, and the same question gets the same answer.
   */
  private Plan unlessTheSame(Plan found) {
    Plan first = new Planning(situation.withLast(List.of()), effort, solver).plan();
    Score score = Tally.of(first.provisions(), first.movements(), situation);
    return score.changes() == 0
        ? new Plan(
            first.provisions(), first.movements(), score, first.bounds(), first.contradictions())
        : found;
  }

  /** What the last plan had and can still be, as far as one need can tell. */
  private List<Provision> kept() {
    Map<String, Piece> pieces = new HashMap<>();
    situation.span().pieces().forEach(piece -> pieces.put(piece.code(), piece));
    Set<Need> asked = new HashSet<>(situation.span().needs());
    List<Provision> kept = new ArrayList<>();
    situation.last().stream()
        .filter(was -> asked.contains(was.need()))
        .forEach(was -> findAgain(was, pieces).ifPresent(kept::add));
    return kept;
  }

  private Optional<Provision> findAgain(Provision was, Map<String, Piece> pieces) {
    Need need = was.need();
    Ask ask = Ask.of(need, situation);
    if (was instanceof Provision.Worn worn) {
      return Optional.ofNullable(pieces.get(worn.piece().code()))
          .filter(piece -> !piece.keptFrom().contains(need.mass()))
          .filter(piece -> ask.depth(piece, situation.traits(piece)) != Ask.NEVER)
          .map(
              piece ->
                  new Provision.Worn(
                      need, piece, ask.depth(piece, situation.traits(piece)), false));
    }
    boolean isLawful = ask.depthWithout() != Ask.NEVER;
    return was instanceof Provision.LeftOut && isLawful
        ? Optional.of(new Provision.LeftOut(need, ask.depthWithout()))
        : Optional.empty();
  }

  /** Of days of which the last plan still answers all, since the others are better seen whole. */
  private List<Provision> ofUntouchedDays(List<Provision> kept) {
    Map<Need, Provision> byNeed = new HashMap<>();
    kept.forEach(one -> byNeed.put(one.need(), one));
    Settled settled = Settled.keeping(kept, situation, roads);
    return Days.of(situation.span().needs(), roads).stream()
        .map(Days::needs)
        .filter(needs -> needs.stream().allMatch(settled.provisions()::containsKey))
        .flatMap(Collection::stream)
        .map(byNeed::get)
        .filter(one -> one != null)
        .toList();
  }
}
