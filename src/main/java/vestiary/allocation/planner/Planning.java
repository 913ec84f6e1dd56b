package vestiary.allocation.planner;

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
import vestiary.allocation.plan.Score;
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
    this.roads = roads(situation);
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
    List<long[]> tiers = JOURNEYS.stream().map(model::costs).toList();
    Work work = new Work(effort.work(), effort.isCancelled());
    long[] start = new long[0];
    if (!byPieces) {
      FewCarriages carriages = new FewCarriages(model, solver);
      start = carriages.first();
      effort.onPlan().accept(plans.of(Answer.of(start, tiers), coverage, effort.counting()));
      start = carriages.improved(start, extents(coverage), work);
      effort.onPlan().accept(plans.of(Answer.of(start, tiers), coverage, effort.counting()));
    }
    Answer answer = solver.minimise(model.program(), tiers, start, work);
    Plan plan = plans.of(answer, coverage, effort.counting());
    effort.onPlan().accept(plan);
    return plan;
  }

  /** Unmet and steps alone. */
  Score coverageScore() {
    List<DayCoverage> days = coverage();
    List<Long> values =
        Measure.coverage().stream()
            .map(m -> days.stream().mapToLong(day -> day.values()[m.ordinal()]).sum())
            .toList();
    return new Score(
        values.subList(0, 3),
        Tally.sum(values.subList(3, 6), Tally.steps(held.values())),
        0,
        0,
        0,
        0);
  }

  private List<DayCoverage> coverage() {
    Items items = Items.of(situation, roads, Set.of());
    Work work = new Work(WORK_OF_A_DAY, effort.isCancelled());
    return Days.of(open, roads).stream()
        .map(day -> DayCoverage.of(day, situation, items.all(), roads, solver, work))
        .toList();
  }

  private static List<Extent> extents(List<DayCoverage> coverage) {
    return coverage.stream().map(day -> day.day().extent()).toList();
  }

  private static void keep(DayCoverage day, FlowModel model) {
    Set<MassId> masses = day.day().needs().stream().map(Need::mass).collect(Collectors.toSet());
    for (Measure measure : Measure.coverage()) {
      model.limit(measure, masses, day.values()[measure.ordinal()]);
    }
  }

  /** The churches of a situation and the ways between them. */
  static Roads roads(Situation situation) {
    return new Roads(
        churches(situation), situation.span().journeys(), situation.span().policies().turn());
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
