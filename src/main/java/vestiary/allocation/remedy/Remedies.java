package vestiary.allocation.remedy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import vestiary.allocation.Shortage;
import vestiary.allocation.Span;
import vestiary.allocation.plan.Movement;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.PlanProof;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Score;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.planner.Effort;
import vestiary.allocation.planner.Planner;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;

/**
 * Finds what mends a shortage. Nothing is offered that planning anew does not show to work: with
 * it, all of the days concerned are covered at least as well as without, the shortage is gone, and
 * no other has come in its place.
 */
public final class Remedies {

  /** For each plan that tries a change out; enough for a real cluster's day. */
  private static final double WORK = 2;

  private final Planner planner;

  public Remedies(Planner planner) {
    this.planner = planner;
  }

  /**
   * What mends a shortage, best first: what leaves least unmet, then what is least trouble, then
   * the fewest journeys, and what no owner need be asked for.
   *
   * @param situation of the days of the shortage, or of more
   * @param leeway what may be tried beyond the vestments themselves
   */
  public List<Remedy> find(Shortage shortage, Situation situation, Leeway leeway) {
    Situation days = planner.around(shortage.needs(), situation);
    return new Search(shortage, days, leeway).find();
  }

  private final class Search {

    private final Shortage shortage;
    private final Situation days;
    private final Candidates candidates;
    private final Standing standing;
    private final List<Leeway.Open> open;
    private final Situation settled;
    private final Score uncovered;
    private final Plan withoutShort;

    Search(Shortage shortage, Situation days, Leeway leeway) {
      this.shortage = shortage;
      this.days = days;
      this.candidates = new Candidates(shortage, days, leeway);
      this.standing = new Standing(shortage, days);
      this.uncovered = planner.coverage(days);
      this.open = leeway.open();
      this.settled =
          days.withHolds(
              Stream.concat(days.holds().stream(), candidates.atHome().stream()).toList());
      this.withoutShort =
          planner.plan(
              without(days, need -> isShort(need) || open.stream().anyMatch(o -> o.isOf(need))),
              Effort.of(WORK));
    }

    List<Remedy> find() {
      List<Remedy> found = new ArrayList<>();
      for (Change change : candidates.all()) {
        findRemedy(change).ifPresent(found::add);
        if (change instanceof Change.Borrow borrow) {
          // What is bought serves like what is borrowed.
          found.stream()
              .filter(remedy -> remedy.change().equals(borrow))
              .findFirst()
              .map(remedy -> remedy.with(new Change.Buy(borrow.pieces())))
              .ifPresent(found::add);
        }
      }
      for (MassId mass : shortage.masses()) {
        // Of the hours that would do, the nearest is enough.
        candidates.starts(mass).stream()
            .map(this::findRemedy)
            .flatMap(Optional::stream)
            .findFirst()
            .ifPresent(found::add);
      }
      return found.stream().sorted(Remedy.BY_COST).toList();
    }

    private Optional<Remedy> findRemedy(Change change) {
      Amended amended = Amended.by(change, keepsHome(change) ? settled : days);
      Situation after = amended.situation();
      if (leavesMore(amended.with(planner.coverage(after)), uncovered)) {
        return Optional.empty();
      }
      Situation decided = without(after, need -> isOpen(need, change));
      Plan with = planner.plan(decided, Effort.of(WORK));
      boolean holds =
          withoutShort.contradictions().containsAll(with.contradictions())
              && PlanProof.findObjections(with, decided).isEmpty()
              && standing.isGoneIn(after, with);
      return holds ? Optional.of(remedy(change, amended, with)) : Optional.empty();
    }

    private static boolean keepsHome(Change change) {
      return change instanceof Change.TakeStep
          || change instanceof Change.BringOwn
          || change instanceof Change.Release;
    }

    private Remedy remedy(Change change, Amended amended, Plan with) {
      Score after = amended.with(with.score());
      List<Movement> journeys = new ArrayList<>(with.movements());
      journeys.removeAll(withoutShort.movements());
      boolean asks =
          journeys.stream().anyMatch(Movement::onAsking)
              || (change instanceof Change.Carry carry && Remedy.asks(carry.pieces(), days));
      return new Remedy(
          change,
          Cost.between(uncovered, withoutShort.score(), after),
          after,
          asks,
          changed(with),
          journeys,
          with);
    }

    /** What is worn at other Masses otherwise than without the remedy. */
    private List<Provision> changed(Plan with) {
      Set<MassId> own = Set.copyOf(shortage.masses());
      Map<Need, Provision> before = new HashMap<>();
      withoutShort.provisions().forEach(one -> before.put(one.need(), one));
      return with.provisions().stream()
          .filter(one -> !own.contains(one.need().mass()) && before.containsKey(one.need()))
          .filter(one -> !one.findPiece().equals(before.get(one.need()).findPiece()))
          .toList();
    }

    /** A Mass that is changed as a whole is settled as a whole. */
    private boolean isOpen(Need need, Change change) {
      boolean settled =
          (change instanceof Change.MoveStart move && move.mass().equals(need.mass()))
              || (change instanceof Change.ChooseColour choice
                  && choice.mass().equals(need.mass()));
      return !settled && open.stream().anyMatch(one -> one.isOf(need));
    }

    private boolean isShort(Need need) {
      return isOfKind(need)
          && shortage.unserved().stream().anyMatch(one -> one.wearer().equals(need.wearer()));
    }

    private boolean isOfKind(Need need) {
      return need.kind() == shortage.pieceKind()
          || need.kind() == Candidates.mateOf(shortage.pieceKind());
    }
  }

  private static Situation without(Situation situation, Predicate<Need> left) {
    Span span = situation.span();
    return situation.with(
        new Span(
            span.needs().stream().filter(left.negate()).toList(),
            span.pieces(),
            span.journeys(),
            span.policies(),
            span.lying()));
  }

  private static boolean leavesMore(Score one, Score other) {
    return new Score(one.unmet(), List.of(), 0, 0, 0, 0)
            .compareTo(new Score(other.unmet(), List.of(), 0, 0, 0, 0))
        > 0;
  }
}
