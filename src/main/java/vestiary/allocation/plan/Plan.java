package vestiary.allocation.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Which piece serves which need, and the journeys that takes.
 *
 * @param provisions one for each need, in canonical order
 * @param movements what must be carried, by the hour of leaving, then churches
 * @param waysHome what rides home in the end with whoever drives there anyway, in the same order;
 *     it counts for nothing
 * @param score of this plan
 * @param bounds what each number of the score can be at least, those before it being what they are,
 *     among all plans that take a set apart only where somebody would else go without or step down;
 *     0 after the first that differs, and after the steps where a set is taken apart
 * @param contradictions holds and absences that no plan can keep, in words
 */
public record Plan(
    List<Provision> provisions,
    List<Movement> movements,
    List<Movement> waysHome,
    Score score,
    Score bounds,
    List<Contradiction> contradictions) {

  public Plan {
    provisions = List.copyOf(provisions);
    movements = List.copyOf(movements);
    waysHome = List.copyOf(waysHome);
    Objects.requireNonNull(score, "score");
    Objects.requireNonNull(bounds, "bounds");
    contradictions = List.copyOf(contradictions);
  }

  /** A plan that leaves everything where it was needed last. */
  public Plan(
      List<Provision> provisions,
      List<Movement> movements,
      Score score,
      Score bounds,
      List<Contradiction> contradictions) {
    this(provisions, movements, List.of(), score, bounds, contradictions);
  }

  /** The same plan with other ways home. */
  public Plan withWaysHome(List<Movement> ways) {
    return new Plan(provisions, movements, ways, score, bounds, contradictions);
  }

  /** All journeys, those home included, by the hour of leaving; what rides together as one. */
  public List<Movement> journeys() {
    List<Movement> all = new ArrayList<>(movements);
    for (Movement way : waysHome) {
      Optional<Movement> same = all.stream().filter(way::isTogetherWith).findFirst();
      same.ifPresent(all::remove);
      all.add(same.map(one -> one.withMore(way.pieces())).orElse(way));
    }
    all.sort(Comparator.comparing(Movement::leaveBy));
    return List.copyOf(all);
  }

  /** The same plan, judged by the bounds of another for the same situation. */
  public Plan withBounds(Plan other) {
    Score least = other.bounds();
    long carriages = Math.min(least.carriages(), score.carriages());
    Score own = new Score(least.unmet(), least.steps(), carriages, 0, 0, 0);
    return new Plan(provisions, movements, waysHome, score, own, contradictions);
  }

  public PlanStatus status() {
    return score.equals(bounds) ? PlanStatus.PROVEN : PlanStatus.STOPPED;
  }

  /** Who wears what, in canonical order of the needs. */
  public List<Provision.Worn> assignments() {
    return only(Provision.Worn.class);
  }

  /** What is lawfully left out, in canonical order of the needs. */
  public List<Provision.LeftOut> leftOut() {
    return only(Provision.LeftOut.class);
  }

  /** What nothing lawful serves, in canonical order of the needs. */
  public List<Provision.Unmet> unmet() {
    return only(Provision.Unmet.class);
  }

  private <P extends Provision> List<P> only(Class<P> kind) {
    return provisions.stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
