package vestiary.allocation.remedy;

import java.util.Comparator;
import java.util.List;
import vestiary.allocation.plan.Movement;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Score;

/**
 * A change that mends a shortage, shown to do so by planning again.
 *
 * @param before the score of the days concerned without it
 * @param after their score with it, substitutes taken by it included
 * @param changed what would be worn otherwise than without it, in canonical order of the needs
 * @param movements all journeys of these days with it
 */
public record Remedy(
    Change change, Score before, Score after, List<Provision> changed, List<Movement> movements) {

  /** What leaves least unmet, then what is least trouble, then by score. */
  static final Comparator<Remedy> BY_COST =
      Comparator.comparing((Remedy remedy) -> remedy.unmet())
          .thenComparing(remedy -> remedy.change().trouble())
          .thenComparing(Remedy::after)
          .thenComparing(remedy -> remedy.change().toString());

  public Remedy {
    changed = List.copyOf(changed);
    movements = List.copyOf(movements);
  }

  private long unmet() {
    return after.unmet().stream().mapToLong(Long::longValue).sum();
  }
}
