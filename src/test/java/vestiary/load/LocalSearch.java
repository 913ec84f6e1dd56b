package vestiary.load;

import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.SolverConfig;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/**
 * Plans by a general planning library, with what it does by default: each need gets the best piece
 * there is, one after the other; then one change after another is tried.
 */
final class LocalSearch {

  private LocalSearch() {}

  /** What each need is served with after so much time; empty if what it found clashes. */
  static Map<Need, Piece> plan(Situation situation, Duration time) {
    SolverConfig config =
        new SolverConfig()
            .withSolutionClass(LocalSearchWeek.class)
            .withEntityClasses(LocalSearchNeed.class)
            .withScoreDirectorFactory(
                new ScoreDirectorFactoryConfig()
                    .withIncrementalScoreCalculatorClass(LocalSearchScore.class))
            .withRandomSeed(1L)
            .withTerminationSpentLimit(time);
    SolverFactory<LocalSearchWeek> factory = SolverFactory.create(config);
    LocalSearchWeek week = factory.buildSolver().solve(new LocalSearchWeek(situation));
    Map<Need, Piece> worn = new HashMap<>();
    week.needs().stream()
        .filter(one -> one.getPiece() != null)
        .forEach(one -> worn.put(one.need(), one.getPiece()));
    return week.isFeasible() ? worn : Map.of();
  }
}
