package vestiary.allocation.planner;

import java.util.Arrays;
import java.util.List;
import vestiary.allocation.flow.Extent;
import vestiary.allocation.flow.FlowModel;
import vestiary.allocation.flow.Measure;
import vestiary.allocation.solver.Answer;
import vestiary.allocation.solver.Solver;
import vestiary.allocation.solver.Work;

/**
 * Flows with few carriages, found quickly and not proven: by sharing the cost of each journey among
 * those who ride, then by working over one day after the other.
 */
final class FewCarriages {

  /** So often the cost of a carriage is shared out anew among those who rode together. */
  private static final int SHARINGS = 6;

  /** For one day's journeys, once. */
  private static final double WORK_OF_A_DAY = 1;

  /** Of the work allowed, what all days' journeys may take. */
  private static final double SHARE = 0.05;

  private static final double WORK_OF_A_FLOW = 10;

  private final FlowModel model;
  private final Solver solver;
  private final long[] costs;

  FewCarriages(FlowModel model, Solver solver) {
    this.model = model;
    this.solver = solver;
    long[] carriages = model.costs(Measure.CARRIAGES);
    long[] minutes = model.costs(Measure.MINUTES);
    long carriage = 1 + Arrays.stream(minutes).max().orElse(0) * 20;
    this.costs = new long[carriages.length];
    Arrays.setAll(costs, column -> carriages[column] * carriage + minutes[column]);
  }

  /** The best of a few flows by a linear stand-in; empty if none was found. */
  long[] first() {
    long[] best = new long[0];
    long[] shares = new long[0];
    long[] columns = new long[0];
    for (int sharing = 0; sharing < SHARINGS; sharing++) {
      shares = model.shares(columns, shares);
      columns =
          solver
              .minimise(model.opened(), List.of(shares), new long[0], Work.of(WORK_OF_A_FLOW))
              .columns();
      if (columns.length == 0) {
        return best;
      }
      best = better(model.closed(columns), best);
    }
    return best;
  }

  /** Better flows, each day's journeys chosen anew until a round changes nothing. */
  long[] improved(long[] start, List<Extent> days, Work work) {
    long[] best = start;
    long[] before;
    double left = days.size() < 2 ? 0 : work.units() * SHARE;
    do {
      before = best;
      for (Extent day : days) {
        if (left > 0 && !work.isCancelled().getAsBoolean()) {
          Answer answer =
              solver.minimise(
                  model.focused(best, day),
                  List.of(costs),
                  best,
                  new Work(Math.min(left, WORK_OF_A_DAY), work.isCancelled()));
          left -= answer.work();
          best = answer.isFound() ? better(answer.columns(), best) : best;
        }
      }
    } while (best != before);
    return best;
  }

  private long[] better(long[] one, long[] best) {
    return best.length == 0 || measure(one) < measure(best) ? one : best;
  }

  private long measure(long[] columns) {
    return Answer.of(columns, List.of(costs)).values()[0];
  }
}
