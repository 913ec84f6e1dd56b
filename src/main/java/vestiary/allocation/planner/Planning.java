package vestiary.allocation.planner;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.flow.Demand;
import vestiary.allocation.flow.Extent;
import vestiary.allocation.flow.FlowModel;
import vestiary.allocation.flow.Items;
import vestiary.allocation.flow.Manner;
import vestiary.allocation.flow.Measure;
import vestiary.allocation.flow.Roads;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.solver.Answer;
import vestiary.allocation.solver.Solver;
import vestiary.allocation.solver.Work;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/** The making of one plan. */
final class Planning {

  /** For one day's coverage, where the relaxation is not whole. */
  private static final double WORK_OF_A_DAY = 10;

  /** So often the cost of a carriage is shared out anew among those who rode together. */
  private static final int SHARINGS = 4;

  private static final List<Measure> JOURNEYS =
      List.of(Measure.CARRIAGES, Measure.MINUTES, Measure.PREFERENCES, Measure.CHANGES);

  private final Situation situation;
  private final Effort effort;
  private final Solver solver;
  private final Roads roads;
  private final Map<Need, Provision.Worn> held;
  private final List<Need> open;

  Planning(Situation situation, Effort effort, Solver solver) {
    this.situation = situation;
    this.effort = effort;
    this.solver = solver;
    this.roads =
        new Roads(
            churches(situation), situation.span().journeys(), situation.span().policies().turn());
    this.held = HeldNeeds.of(situation);
    this.open =
        situation.span().needs().stream().filter(need -> !held.containsKey(need)).sorted().toList();
  }

  Plan plan() {
    List<DayCoverage> coverage = coverage();
    Set<String> parted = new TreeSet<>();
    coverage.forEach(day -> parted.addAll(day.parted()));
    Items items = Items.of(situation, roads, parted);
    boolean byPieces = effort.counting() == Effort.Counting.PIECES;
    FlowModel model =
        FlowModel.of(
            Demand.of(open, situation, roads),
            items.all(),
            roads,
            Extent.WHOLE,
            byPieces ? Manner.PIECES : Manner.CARRIAGES);
    coverage.forEach(day -> keep(day, model));
    SpanPlan plans = new SpanPlan(model, situation, roads, held, items.contradictions());
    long[] first = byPieces ? new long[0] : firstColumns(model);
    List<long[]> tiers = JOURNEYS.stream().map(model::costs).toList();
    if (!byPieces) {
      effort.onPlan().accept(plans.of(Answer.of(first, tiers), coverage, effort.counting()));
    }
    Answer answer =
        solver.minimise(
            model.program(), tiers, first, new Work(effort.work(), effort.isCancelled()));
    Plan plan = plans.of(answer, coverage, effort.counting());
    effort.onPlan().accept(plan);
    return plan;
  }

  List<DayCoverage> coverage() {
    Items items = Items.of(situation, roads, Set.of());
    Work work = new Work(WORK_OF_A_DAY, effort.isCancelled());
    return Days.of(open, roads).stream()
        .map(day -> DayCoverage.of(day, situation, items.all(), roads, solver, work))
        .toList();
  }

  private static void keep(DayCoverage day, FlowModel model) {
    Set<MassId> masses = day.day().needs().stream().map(Need::mass).collect(Collectors.toSet());
    for (Measure measure : Measure.coverage()) {
      model.limit(measure, masses, day.values()[measure.ordinal()]);
    }
  }

  /** Flows by a linear stand-in for carriages, the best of a few. */
  private long[] firstColumns(FlowModel model) {
    long[] best = new long[0];
    long[] shares = new long[0];
    long[] columns = new long[0];
    List<long[]> tiers = List.of(model.costs(Measure.CARRIAGES), model.costs(Measure.MINUTES));
    for (int sharing = 0; sharing < SHARINGS; sharing++) {
      shares = model.shares(columns, shares);
      Answer answer =
          solver.minimise(model.opened(), List.of(shares), new long[0], Work.of(WORK_OF_A_DAY));
      columns = answer.columns();
      long[] closed = model.closed(columns);
      if (best.length == 0
          || Arrays.compare(Answer.of(closed, tiers).values(), Answer.of(best, tiers).values())
              < 0) {
        best = closed;
      }
    }
    return best;
  }

  private static Collection<ChurchId> churches(Situation situation) {
    Stream<ChurchId> own =
        Stream.concat(
            situation.span().needs().stream().map(Need::church),
            situation.span().pieces().stream().map(Piece::home));
    Stream<ChurchId> others =
        Stream.concat(
            situation.holds().stream().map(Hold::church),
            situation.rides().stream().flatMap(ride -> Stream.of(ride.from(), ride.to())));
    return Stream.concat(own, others).collect(Collectors.toSet());
  }
}
