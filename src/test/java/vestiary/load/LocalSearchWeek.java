package vestiary.load;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.score.buildin.bendablelong.BendableLongScore;
import java.util.ArrayList;
import java.util.List;
import vestiary.allocation.flow.Ask;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/** A week as a general planning library sees it. */
@PlanningSolution
public class LocalSearchWeek {

  private Situation situation;

  @PlanningEntityCollectionProperty private List<LocalSearchNeed> needs;

  @PlanningScore(bendableHardLevelsSize = 1, bendableSoftLevelsSize = Recount.LEVELS)
  private BendableLongScore score;

  /** For the library. */
  public LocalSearchWeek() {}

  LocalSearchWeek(Situation situation) {
    this.situation = situation;
    this.needs = new ArrayList<>();
    for (Need need : situation.span().needs().stream().sorted().toList()) {
      List<Piece> eligible =
          situation.span().pieces().stream()
              .filter(piece -> Ask.of(need, situation).depth(piece, situation.traits(piece)) >= 0)
              .filter(piece -> !piece.staysHome() || piece.home().equals(need.church()))
              .toList();
      needs.add(new LocalSearchNeed(needs.size(), need, eligible));
    }
  }

  Situation situation() {
    return situation;
  }

  boolean isFeasible() {
    return score != null && score.isFeasible();
  }

  List<LocalSearchNeed> needs() {
    return needs;
  }
}
