package vestiary.allocation.remedy;

import java.util.Comparator;
import java.util.List;
import vestiary.allocation.plan.Movement;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Score;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.Piece;

/**
 * A change that mends a shortage, shown to do so by planning again.
 *
 * @param cost what it costs
 * @param after the score of the days concerned with it, substitutes taken by it included
 * @param onAsking whether an owner must be asked first
 * @param changed what others would wear otherwise than without it, in canonical order of the needs
 * @param journeys those that are made with it and not without, by the hour of leaving
 * @param plan of the days concerned, with it
 */
public record Remedy(
    Change change,
    Cost cost,
    Score after,
    boolean onAsking,
    List<Provision> changed,
    List<Movement> journeys,
    Plan plan) {

  /**
   * What leaves least unmet, then what is least trouble, then the fewest journeys and minutes, then
   * what no owner need be asked for, then by the rest of the score.
   */
  static final Comparator<Remedy> BY_COST =
      Comparator.comparing(Remedy::unmet)
          .thenComparing(remedy -> remedy.change().trouble())
          .thenComparing(remedy -> remedy.after().carriages())
          .thenComparing(remedy -> remedy.after().minutes())
          .thenComparing(Remedy::onAsking)
          .thenComparing(Remedy::after)
          .thenComparing(remedy -> remedy.change().toString());

  public Remedy {
    changed = List.copyOf(changed);
    journeys = List.copyOf(journeys);
  }

  /** The same by another change that comes to the same. */
  Remedy with(Change other) {
    return new Remedy(other, cost, after, onAsking, changed, journeys, plan);
  }

  private long unmet() {
    return after.unmet().stream().mapToLong(Long::longValue).sum();
  }

  /** Whether some of the pieces go to another church, and only if their owner says so. */
  static boolean asks(List<Piece> pieces, Situation situation) {
    return pieces.stream().anyMatch(piece -> situation.traits(piece).onAsking());
  }
}
