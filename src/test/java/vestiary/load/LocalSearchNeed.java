package vestiary.load;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.lookup.PlanningId;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;
import java.util.List;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/** A need as a general planning library sees it: to be given one of some pieces, or none. */
@PlanningEntity
public class LocalSearchNeed {

  @PlanningId private int number;
  private Need need;

  @ValueRangeProvider(id = "pieces")
  private List<Piece> eligible;

  @PlanningVariable(valueRangeProviderRefs = "pieces", allowsUnassigned = true)
  private Piece piece;

  /** For the library. */
  public LocalSearchNeed() {}

  LocalSearchNeed(int number, Need need, List<Piece> eligible) {
    this.number = number;
    this.need = need;
    this.eligible = eligible;
  }

  Need need() {
    return need;
  }

  public Piece getPiece() {
    return piece;
  }

  public void setPiece(Piece piece) {
    this.piece = piece;
  }
}
