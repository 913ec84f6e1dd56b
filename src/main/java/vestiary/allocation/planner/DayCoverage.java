package vestiary.allocation.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.LongStream;
import vestiary.allocation.flow.Demand;
import vestiary.allocation.flow.FlowModel;
import vestiary.allocation.flow.Item;
import vestiary.allocation.flow.Manner;
import vestiary.allocation.flow.Measure;
import vestiary.allocation.flow.Roads;
import vestiary.allocation.solver.Answer;
import vestiary.allocation.solver.Solver;
import vestiary.allocation.solver.Work;

/**
 * What of one day can be met at all.
 *
 * @param values by each measure of a coverage
 * @param bounds what each can be at least
 * @param parted codes of sets whose pieces must go their own ways for it
 */
record DayCoverage(Days day, long[] values, long[] bounds, Set<String> parted) {

  private static final List<Measure> MEASURES = Measure.coverage();

  /** The best there is; sets are taken apart only if that helps. */
  static DayCoverage of(
      Days day, Demand demand, List<Item> items, Roads roads, Solver solver, Work work) {
    FlowModel whole = FlowModel.of(demand, items, roads, day.extent(), Manner.COVERAGE);
    long[] none = new long[MEASURES.size()];
    if (meetsAll(whole, solver)) {
      return new DayCoverage(day, none, none, Set.of());
    }
    DayCoverage best = solve(day, whole, MEASURES, solver, work);
    if (items.stream().allMatch(item -> item.pieces().size() == 1)) {
      return best;
    }
    FlowModel loose = FlowModel.of(demand, items, roads, day.extent(), Manner.COVERAGE_PARTED);
    List<Measure> measures = new ArrayList<>(MEASURES);
    measures.add(Measure.PARTED);
    DayCoverage parted = solve(day, loose, measures, solver, work);
    boolean better = Arrays.compare(parted.values, best.values) < 0;
    return better ? parted : new DayCoverage(day, best.values, parted.bounds, Set.of());
  }

  /**
   * Whether nothing is unmet and nothing substituted, which is the usual case and found at once.
   */
  private static boolean meetsAll(FlowModel model, Solver solver) {
    long[] all = new long[model.program().columns()];
    for (Measure measure : MEASURES) {
      long[] costs = model.costs(measure);
      Arrays.setAll(all, column -> Math.max(all[column], costs[column]));
    }
    Answer answer = solver.minimise(model.program(), List.of(all), new long[0], Work.of(0));
    return answer.isFound() && answer.values()[0] == 0;
  }

  private static DayCoverage solve(
      Days day, FlowModel model, List<Measure> measures, Solver solver, Work work) {
    List<long[]> tiers = measures.stream().map(model::costs).toList();
    Answer answer = solver.minimise(model.program(), tiers, new long[0], work);
    if (!answer.isFound()) {
      // The work was over before anything was found: from nothing served there is always a way on.
      answer = solver.minimise(model.program(), tiers, idle(model, solver), work);
    }
    Set<String> parted = new TreeSet<>();
    model.parted(answer.columns()).forEach(item -> parted.add(item.pieces().get(0).set()));
    return new DayCoverage(day, first(answer.values()), first(answer.bounds()), parted);
  }

  /** A solution that serves nothing. */
  static long[] idle(FlowModel model, Solver solver) {
    long[] nothing = new long[model.program().columns()];
    return solver.minimise(model.idle(), List.of(nothing), new long[0], Work.of(60)).columns();
  }

  private static long[] first(long[] numbers) {
    return LongStream.of(numbers).limit(MEASURES.size()).toArray();
  }
}
