package vestiary.plan;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.allocation.plan.Situation;
import vestiary.asking.AskedTrip;
import vestiary.asking.Asking;
import vestiary.asking.AskingState;
import vestiary.asking.ReadAskings;
import vestiary.planning.SpanToCheck;
import vestiary.pool.ReadTaken;
import vestiary.pool.ReadWear;

/**
 * Puts the question of a span to the planner: as it is now, and as it was for the plan that holds.
 */
@ApplicationScoped
class AskPlanner {

  private final PlanRows plans;
  private final PlanBases bases;
  private final ReadTaken taken;
  private final ReadAskings askings;
  private final ReadWear wear;

  AskPlanner(PlanRows plans, PlanBases bases, ReadTaken taken, ReadAskings askings, ReadWear wear) {
    this.wear = wear;
    this.plans = plans;
    this.bases = bases;
    this.taken = taken;
    this.askings = askings;
  }

  /** The question as it is now, with what carriers have answered. */
  @Transactional
  Situation of(SpanToCheck span) {
    PlannedDays days = PlannedDays.of(span);
    List<AskedTrip> declined =
        askings.leavingBetween(days.from(), days.until()).stream()
            .filter(one -> one.riding() && one.state() == AskingState.DECLINED)
            .map(Asking::trip)
            .toList();
    return Answered.in(SituationOf.span(span, wear.ofLate()), declined);
  }

  /** The question as it was for that plan; empty if it cannot be told any more. */
  @Transactional
  Optional<Situation> findBefore(String plan) {
    return bases.find(UUID.fromString(plan)).map(Basis::situation);
  }

  /**
   * The plan that holds for these very dates; empty if there is none, or if it cannot be told what
   * it was made from.
   *
   * @param now the question as it is now
   */
  Optional<StandingPlan.Found> findStanding(SpanToCheck span, Situation now) {
    return QuarkusTransaction.joiningExisting()
        .call(
            () ->
                plans.appliedWithin(span.first(), span.last()).stream()
                    .findFirst()
                    .filter(row -> isOf(row, span))
                    .flatMap(row -> find(row, span, now)));
  }

  private Optional<StandingPlan.Found> find(PlanRow row, SpanToCheck span, Situation now) {
    PlannedDays days = PlannedDays.of(span);
    return bases
        .find(row.id)
        .map(basis -> new StandingPlan.Kept(basis, row.result, row.progress))
        .map(
            kept ->
                StandingPlan.found(
                    span,
                    kept,
                    Together.trips(taken.carriedBetween(days.from(), days.until())),
                    now));
  }

  private static boolean isOf(PlanRow row, SpanToCheck span) {
    return row.firstDate.equals(span.first()) && row.lastDate.equals(span.last());
  }
}
