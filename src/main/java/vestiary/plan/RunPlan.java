package vestiary.plan;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.persistence.LockModeType;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.jboss.logging.Logger;
import vestiary.access.CurrentCluster;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.PlanProof;
import vestiary.allocation.plan.PlanStatus;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.planner.Effort;
import vestiary.allocation.planner.Planner;
import vestiary.planning.CheckClashes;
import vestiary.planning.SpanToCheck;
import vestiary.web.Speech;

/**
 * Works a plan out, from the beginning each time it is begun. A copy of the server that was thought
 * dead and wakes up again finds that somebody began after it, and writes nothing.
 */
@ApplicationScoped
class RunPlan {

  private static final Logger LOG = Logger.getLogger(RunPlan.class);

  /** A plan that took a copy of the server down with it three times is not begun once more. */
  private static final int MOST_STARTS = 3;

  private final PlanRows plans;
  private final PlanBases bases;
  private final AskPlanner question;
  private final CheckClashes check;
  private final CurrentCluster current;
  private final PlanWatch watch;
  private final Planner planner;

  RunPlan(
      PlanRows plans,
      PlanBases bases,
      AskPlanner question,
      CheckClashes check,
      CurrentCluster current,
      PlanWatch watch,
      Planner planner) {
    this.planner = planner;
    this.plans = plans;
    this.bases = bases;
    this.question = question;
    this.check = check;
    this.current = current;
    this.watch = watch;
  }

  /** One beginning of a plan. */
  private record Turn(UUID plan, int starts, LocalDate first, LocalDate last, boolean keeping) {}

  /**
   * Works a plan out and keeps what was found; nothing if it is over already.
   *
   * @throws CancellationException if the server stops, so that another copy begins it anew
   */
  @ActivateRequestContext
  void run(UUID cluster, UUID id, BooleanSupplier isStopping) {
    current.assign(cluster);
    Optional<Turn> begun = QuarkusTransaction.requiringNew().call(() -> begin(id));
    if (begun.isEmpty()) {
      return;
    }
    try {
      workOut(begun.get(), isStopping);
    } catch (OutOfMemoryError tooLarge) {
      LOG.errorf(tooLarge, "Plan %s needs more memory than there is", id);
      write(
          begun.get(),
          row ->
              fail(
                  row,
                  Speech.word(
                      "It takes more memory than the server has. Plan fewer days at once, or give the server more.")));
    }
  }

  private void workOut(Turn turn, BooleanSupplier isStopping) {
    SpanToCheck span = check.load(turn.first(), turn.last());
    Situation now = question.of(span);
    Optional<StandingPlan.Found> standing =
        turn.keeping() ? question.findStanding(span, now) : Optional.empty();
    Situation situation = standing.map(one -> now.withLast(one.last().provisions())).orElse(now);
    Plan plan = plan(standing, situation, effort(turn, situation, isStopping));
    if (isStopping.getAsBoolean()) {
      throw new CancellationException("the server stops");
    }
    List<String> objections = PlanProof.findObjections(plan, situation);
    if (!objections.isEmpty()) {
      LOG.errorf("Plan %s does not pass the check: %s", turn.plan(), objections);
      write(
          turn,
          row -> fail(row, Speech.word("The plan that was found did not pass the check by hand.")));
      return;
    }
    PlanResult result = new KeptResult(span, situation, plan).result();
    write(
        turn,
        row -> {
          row.progress = new Progress(plan.score(), plan.bounds());
          row.result = result;
          bases.keep(row.id, Basis.of(situation));
          boolean proven = plan.status() == PlanStatus.PROVEN;
          row.status = (proven ? PlanState.PROVEN : PlanState.STOPPED).id();
        });
  }

  /** Notes that a plan came to nothing. */
  @ActivateRequestContext
  void fail(UUID cluster, UUID id) {
    current.assign(cluster);
    QuarkusTransaction.requiringNew()
        .run(
            () ->
                plans
                    .findByIdOptional(id)
                    .filter(row -> row.state().isAtWork())
                    .ifPresent(
                        row ->
                            fail(
                                row,
                                Speech.word("Something went wrong while it was worked out."))));
    watch.announce();
  }

  private Optional<Turn> begin(UUID id) {
    PlanRow row = plans.findById(id, LockModeType.PESSIMISTIC_WRITE);
    if (row == null || !row.state().isAtWork()) {
      return Optional.empty();
    }
    if (row.starts >= MOST_STARTS) {
      fail(
          row,
          Speech.word(
              "It was begun three times and never came to its end; plan fewer days at once."));
      return Optional.empty();
    }
    row.starts++;
    row.status = PlanState.RUNNING.id();
    return Optional.of(new Turn(id, row.starts, row.firstDate, row.lastDate, row.keeping));
  }

  private Plan plan(Optional<StandingPlan.Found> standing, Situation situation, Effort effort) {
    return standing
        .map(one -> planner.replan(one.before(), one.last(), situation, effort))
        .orElseGet(() -> planner.plan(situation, effort));
  }

  private static void fail(PlanRow row, String sentence) {
    row.status = PlanState.FAILED.id();
    row.failure = sentence;
  }

  private Effort effort(Turn turn, Situation situation, BooleanSupplier isStopping) {
    SeldomAsked cancelled = new SeldomAsked(() -> !write(turn, row -> {}, true));
    return new Effort(
        Workload.of(situation, turn.first(), turn.last()),
        Effort.Counting.CARRIAGES,
        () -> isStopping.getAsBoolean() || cancelled.getAsBoolean(),
        plan ->
            write(turn, row -> row.progress = new Progress(plan.score(), plan.bounds()), false));
  }

  private void write(Turn turn, Consumer<PlanRow> change) {
    write(turn, change, false);
  }

  /**
   * Changes the row unless somebody began after this turn.
   *
   * @param unlessCancelled whether a cancelled plan counts as not this turn's any more
   * @return whether it was changed
   */
  private boolean write(Turn turn, Consumer<PlanRow> change, boolean unlessCancelled) {
    boolean written =
        QuarkusTransaction.requiringNew()
            .call(
                () -> {
                  PlanRow row = plans.findById(turn.plan(), LockModeType.PESSIMISTIC_WRITE);
                  boolean ours =
                      row != null
                          && row.starts == turn.starts()
                          && row.state().isAtWork()
                          && !(unlessCancelled && row.cancelled);
                  if (ours) {
                    change.accept(row);
                  }
                  return ours;
                });
    watch.announce();
    return written;
  }
}
