package vestiary.allocation.solver;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.BitSet;
import java.util.SortedMap;
import java.util.TreeMap;

/** The cheapest switches of which some are in every one of the sets that are known to be wanted. */
final class LeastCover {

  /** For the first answers; what is not proven by then is good enough to learn from. */
  private static final double WORK_AT_ONCE = 0.1;

  /**
   * @param bound the least the cost can be
   * @param work units done
   */
  record Cover(BitSet on, long bound, double work) {}

  private final CpModel model = new CpModel();
  private final SortedMap<Integer, BoolVar> switches = new TreeMap<>();
  private double atOnce = WORK_AT_ONCE;

  LeastCover(Program program) {
    program.switches().stream()
        .filter(column -> program.columnMost(column) > 0)
        .forEach(
            column -> {
              BoolVar one = model.newBoolVar("");
              switches.put(column, one);
              if (program.columnLeast(column) > 0) {
                model.addBoolOr(new Literal[] {one});
              }
            });
  }

  /** From now on one of these must be on. */
  void want(BitSet some) {
    model.addBoolOr(some.stream().mapToObj(switches::get).toArray(Literal[]::new));
  }

  /** From now on these costs are what counts. */
  void minimise(long[] costs) {
    model.clearObjective();
    model.minimize(sum(costs));
  }

  /** From now on twice as much work is done for an answer. */
  void workHarder() {
    atOnce *= 2;
  }

  /** From now on these costs are at most so much. */
  void limit(long[] costs, long most) {
    model.addLessOrEqual(sum(costs), most);
  }

  /**
   * The cheapest cover; an empty one, at no less than 0, if the work did not suffice for any.
   *
   * @param near switches to begin with
   */
  Cover find(BitSet near, Work allowed) {
    model.clearHints();
    switches.forEach((column, one) -> model.addHint(one, near.get(column)));
    CpSolver solver = new CpSolver();
    solver
        .getParameters()
        .setNumWorkers(1)
        .setLinearizationLevel(2)
        .setRandomSeed(1)
        .setMaxDeterministicTime(Math.min(allowed.units(), atOnce));
    CpSolverStatus[] found = new CpSolverStatus[1];
    Interruptible.run(
        () -> found[0] = solver.solve(model), solver::stopSearch, allowed.isCancelled());
    CpSolverStatus status = found[0];
    double work = solver.response().getDeterministicTime();
    BitSet on = new BitSet();
    if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
      return new Cover(on, 0, work);
    }
    switches.forEach((column, one) -> on.set(column, solver.booleanValue(one)));
    return new Cover(on, (long) Math.ceil(solver.bestObjectiveBound() - 1e-6), work);
  }

  private LinearExpr sum(long[] costs) {
    return LinearExpr.weightedSum(
        switches.values().toArray(BoolVar[]::new),
        switches.keySet().stream().mapToLong(column -> costs[column]).toArray());
  }
}
