package vestiary.allocation.planner;

import java.util.Collection;
import java.util.List;
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
import vestiary.allocation.plan.Score;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.plan.Tally;
import vestiary.allocation.solver.Answer;
import vestiary.allocation.solver.Solver;
import vestiary.allocation.solver.Work;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;

/** The making of one plan. */
final class Planning {

  /** For one day's coverage, where the relaxation is not whole. */
  private static final double WORK_OF_A_DAY = 10;

  /** For the journeys of pieces, where the relaxation is not whole. */
  private static final double WORK_OF_A_FLOW = 20;

  /** For who wears what of all that is there. */
  private static final double WORK_OF_WEARING = 1;

  /** With more Masses the first plan is one of single pieces, put together afterwards. */
  private static final int FEW_MASSES = 30;

  /** Among more churches carriages are not searched for: no end of it would be in sight. */
  private static final int MOST_CHURCHES = 20;

  private static final List<Measure> JOURNEYS =
      List.of(Measure.CARRIAGES, Measure.MINUTES, Measure.PREFERENCES, Measure.CHANGES);

  private static final Answer NOTHING_TO_DECIDE =
      new Answer(new long[0], new long[JOURNEYS.size()], new long[JOURNEYS.size()], 0);

  private final Situation situation;
  private final Effort effort;
  private final Solver solver;
  private final Roads roads;
  private final Settled settled;
  private final List<Need> open;

  Planning(Situation situation, Effort effort, Solver solver) {
    this(situation, Settled.held(situation), effort, solver);
  }

  /**
   * @param settled what is answered already, what is held included
   */
  Planning(Situation situation, Settled settled, Effort effort, Solver solver) {
    this.situation = situation;
    this.settled = settled;
    this.effort = effort;
    this.solver = solver;
    this.roads = roads(situation);
    this.open =
        situation.span().needs().stream()
            .filter(need -> !settled.provisions().containsKey(need))
            .sorted()
            .toList();
  }

  Plan plan() {
    List<DayCoverage> coverage = coverage();
    Set<String> parted = new TreeSet<>();
    coverage.forEach(day -> parted.addAll(day.parted()));
    Items items = items(parted);
    if (effort.counting() == Effort.Counting.PIECES) {
      return byPieces(coverage, items, false);
    }
    boolean searching = roads.churches() <= MOST_CHURCHES;
    if (searching && masses() <= FEW_MASSES) {
      return byCarriages(coverage, items);
    }
    Plan first = byPieces(coverage, items, true);
    effort.onPlan().accept(first);
    if (!searching || effort.work() == 0) {
      return first;
    }
    Plan second = byCarriages(coverage, items);
    return second.score().compareTo(first.score()) <= 0 ? second : first.withBounds(second);
  }

  private long masses() {
    return Stream.concat(open.stream().map(Need::mass), settled.holds().stream().map(Hold::mass))
        .distinct()
        .count();
  }

  private Plan byPieces(List<DayCoverage> coverage, Items items, boolean merging) {
    FlowModel model = model(coverage, items, Manner.PIECES);
    if (model.program().columns() == 0) {
      return plans(model, items, coverage).of(NOTHING_TO_DECIDE, effort.counting());
    }
    Answer answer =
        solver.minimise(
            model.program(),
            JOURNEYS.stream().map(model::costs).toList(),
            new long[0],
            new Work(WORK_OF_A_FLOW, effort.isCancelled()));
    if (!answer.isFound()) {
      model = FlowModel.of(demand(open), items.all(), roads, Extent.WHOLE, Manner.PIECES);
      answer = whateverCanBeFound(model);
    }
    SpanPlan plans = plans(model, items, coverage);
    if (!merging) {
      return plans.of(answer, effort.counting());
    }
    long least = LeastCarriages.of(situation, open, coverage);
    return plans.merged(worn(answer, model), least);
  }

  private Plan byCarriages(List<DayCoverage> coverage, Items items) {
    FlowModel model = model(coverage, items, Manner.CARRIAGES);
    SpanPlan plans = plans(model, items, coverage);
    if (model.program().columns() == 0) {
      return plans.of(NOTHING_TO_DECIDE, effort.counting());
    }
    List<long[]> tiers = JOURNEYS.stream().map(model::costs).toList();
    Work work = new Work(effort.work(), effort.isCancelled());
    FewCarriages carriages = new FewCarriages(model, solver);
    long[] start = carriages.first();
    if (start.length > 0) {
      effort.onPlan().accept(plans.of(Answer.of(start, tiers), effort.counting()));
      start = carriages.improved(start, extents(coverage), work);
      effort.onPlan().accept(plans.of(Answer.of(start, tiers), effort.counting()));
    }
    Answer answer = solver.minimise(model.program(), tiers, start, work);
    if (!answer.isFound()) {
      return byPieces(coverage, items, true);
    }
    Plan plan = plans.of(worn(answer, model), effort.counting());
    effort.onPlan().accept(plan);
    return plan;
  }

  /** Where the work was over too early: the same journeys, with what they bring worn at best. */
  private Answer worn(Answer answer, FlowModel model) {
    if (answer.isProven()) {
      return answer;
    }
    Answer worn =
        solver.minimise(
            model.settled(answer.columns()),
            List.of(model.costs(Measure.PREFERENCES), model.costs(Measure.CHANGES)),
            answer.columns(),
            Work.of(WORK_OF_WEARING));
    return worn.isFound()
        ? new Answer(worn.columns(), answer.values(), answer.bounds(), answer.work() + worn.work())
        : answer;
  }

  /**
   * Where the work is over before the days' best is found for the whole span: from nothing served
   * there is always a way on, though it may not reach it.
   */
  private Answer whateverCanBeFound(FlowModel model) {
    List<long[]> tiers =
        Stream.concat(Measure.coverage().stream(), JOURNEYS.stream()).map(model::costs).toList();
    long[] idle = DayCoverage.idle(model, solver);
    Answer answer =
        solver.minimise(
            model.program(), tiers, idle, new Work(WORK_OF_A_FLOW, effort.isCancelled()));
    return Answer.of(answer.columns(), JOURNEYS.stream().map(model::costs).toList());
  }

  private SpanPlan plans(FlowModel model, Items items, List<DayCoverage> coverage) {
    return new SpanPlan(
        model, situation, roads, settled.provisions().values(), items.contradictions(), coverage);
  }

  private Items items(Set<String> parted) {
    return Items.of(situation.withHolds(settled.holds()), roads, parted);
  }

  private Demand demand(Collection<Need> needs) {
    return Demand.of(needs, settled.provisions().values(), situation, roads);
  }

  private FlowModel model(List<DayCoverage> coverage, Items items, Manner manner) {
    FlowModel model = FlowModel.of(demand(open), items.all(), roads, Extent.WHOLE, manner);
    coverage.forEach(day -> keep(day, model));
    return model;
  }

  /** Unmet and steps alone. */
  Score coverageScore() {
    List<DayCoverage> days = coverage();
    List<Long> values =
        Measure.coverage().stream()
            .map(m -> days.stream().mapToLong(day -> day.values()[m.ordinal()]).sum())
            .toList();
    return Tally.sum(
        new Score(values.subList(0, 3), values.subList(3, 6), 0, 0, 0, 0),
        SpanPlan.ofSettledMasses(open, settled.provisions().values(), situation));
  }

  private List<DayCoverage> coverage() {
    Items items = items(Set.of());
    Work work = new Work(WORK_OF_A_DAY, effort.isCancelled());
    return Days.of(open, roads).stream()
        .map(day -> DayCoverage.of(day, demand(day.needs()), items.all(), roads, solver, work))
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
            situation.span().pieces().stream()
                .flatMap(piece -> Stream.of(piece.home(), situation.start(piece))));
    Stream<ChurchId> others =
        Stream.concat(
            situation.holds().stream().map(Hold::church),
            situation.rides().stream().flatMap(ride -> Stream.of(ride.from(), ride.to())));
    return Stream.concat(own, others).collect(Collectors.toSet());
  }
}
