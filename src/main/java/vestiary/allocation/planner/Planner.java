package vestiary.allocation.planner;

import java.util.Collection;
import java.util.List;
import vestiary.allocation.Span;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.Score;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.solver.Solver;
import vestiary.allocation.solver.Solvers;
import vestiary.vesting.Need;

/**
 * Makes plans: first what can be met at all and with which substitutes, day by day; then over the
 * whole span, keeping to that, with the fewest carriages, the fewest minutes driven, what people
 * prefer, and the least change. The same situation gets the same plan.
 */
public final class Planner {

  private final Solver solver;

  /** With the given solver. */
  public Planner(Solver solver) {
    this.solver = solver;
  }

  /** With the best solver of this machine. */
  public static Planner onThisMachine() {
    return new Planner(Solvers.best());
  }

  /** The best plan the effort allows, with its bounds. */
  public Plan plan(Situation situation, Effort effort) {
    Plan found = new Planning(situation, effort, solver).plan();
    Plan kept =
        effort.counting() == Effort.Counting.PIECES || situation.last().isEmpty()
            ? found
            : new Keeping(situation, effort, solver).keep(found);
    return WaysHome.in(kept, situation);
  }

  /**
   * A plan after a change, made anew only for the days that the change touches; what is worn on all
   * others stays as it is, and of what is made anew as much as costs nothing that weighs more. Its
   * bounds are those of plans that leave the other days as they are.
   *
   * @param before the situation the last plan was made for
   * @param last that plan, or what has become of it since, its score not being looked at; a day
   *     with a need that it does not answer counts as changed
   * @param now the situation as it is, its last provisions left aside
   */
  public Plan replan(Situation before, Plan last, Situation now, Effort effort) {
    return WaysHome.in(new Replanning(before, last, now).plan(effort, solver), now);
  }

  /**
   * The situation with no needs but those of the days in which some needs lie, which is all that
   * matters for meeting them.
   */
  public Situation around(Collection<Need> some, Situation situation) {
    Span span = situation.span();
    List<Need> needs =
        Days.of(span.needs(), Planning.roads(situation)).stream()
            .filter(day -> day.needs().stream().anyMatch(some::contains))
            .flatMap(day -> day.needs().stream())
            .toList();
    return situation.with(new Span(needs, span.pieces(), span.journeys(), span.policies()));
  }

  /**
   * What can be met and with which substitutes, journeys and preferences left aside: the first two
   * parts of the best score.
   */
  public Score coverage(Situation situation) {
    return new Planning(situation, Effort.of(0), solver).coverageScore();
  }
}
