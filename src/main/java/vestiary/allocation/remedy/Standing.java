package vestiary.allocation.remedy;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import vestiary.allocation.ClashCheck;
import vestiary.allocation.Level;
import vestiary.allocation.Shortage;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.PieceKind;

/** Which shortages stand before a change, so that it can be told which are new after it. */
final class Standing {

  private record Named(Level level, PieceKind kind, List<MassId> masses) {
    static Named of(Shortage shortage) {
      return new Named(shortage.level(), shortage.pieceKind(), shortage.masses());
    }
  }

  private final Named mended;
  private final Set<Named> before;

  Standing(Shortage shortage, Situation situation) {
    this.mended = Named.of(shortage);
    this.before = find(situation).stream().map(Named::of).collect(Collectors.toSet());
  }

  /**
   * Whether the shortage is gone and none has come in its place. A church that lacks of its own
   * what the plan brings there is not short for that.
   */
  boolean isGoneIn(Situation after, Plan plan) {
    Set<Need> worn = plan.assignments().stream().map(Provision::need).collect(Collectors.toSet());
    return find(after).stream()
        .filter(other -> !isBrought(other, worn))
        .map(Named::of)
        .noneMatch(other -> other.equals(mended) || !before.contains(other));
  }

  private boolean isBrought(Shortage other, Set<Need> worn) {
    return other.level() == Level.LOCAL
        && !Named.of(other).equals(mended)
        && worn.containsAll(other.needs());
  }

  private static List<Shortage> find(Situation situation) {
    return ClashCheck.find(HeldElsewhere.of(situation.span(), situation.holds()));
  }
}
