package vestiary.allocation.solver;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import java.util.stream.IntStream;

/** Looks for the best whole values by one measure, starting from the best that is known. */
final class WholeNumberSearch {

  private final CpModel model = new CpModel();
  private final IntVar[] columns;
  private final long[] start;

  private WholeNumberSearch(Program program, long[] costs, long[] start) {
    this.start = start;
    this.columns =
        IntStream.range(0, program.columns())
            .mapToObj(c -> model.newIntVar(program.columnLeast(c), program.columnMost(c), ""))
            .toArray(IntVar[]::new);
    Program.Entries entries = program.entries();
    IntStream.range(0, program.rows()).forEach(row -> addRow(program, entries, row));
    int[] costly = IntStream.range(0, costs.length).filter(c -> costs[c] != 0).toArray();
    model.minimize(
        LinearExpr.weightedSum(
            IntStream.of(costly).mapToObj(c -> columns[c]).toArray(IntVar[]::new),
            IntStream.of(costly).mapToLong(c -> costs[c]).toArray()));
  }

  /**
   * Searches until the best is proven or the work allowed is done.
   *
   * @param costs of columns, 0 or more each
   * @param start values that keep all bounds, or others to begin near, or none
   */
  static WholeNumberFind search(Program program, long[] costs, long[] start, Work work) {
    boolean sound = start.length == program.columns() && program.admits(start);
    WholeNumberSearch search = new WholeNumberSearch(program, costs, sound ? start : new long[0]);
    search.hint(start);
    return search.run(work);
  }

  private WholeNumberFind run(Work work) {
    if (work.units() == 0 || work.isCancelled().getAsBoolean()) {
      return new WholeNumberFind(start, 0, 0, true);
    }
    CpSolver solver = solver(work.units());
    CpSolverStatus[] status = new CpSolverStatus[1];
    Interruptible.run(
        () -> status[0] = solver.solve(model), solver::stopSearch, work.isCancelled());
    double done = solver.response().getDeterministicTime();
    if (status[0] == CpSolverStatus.INFEASIBLE || status[0] == CpSolverStatus.MODEL_INVALID) {
      return WholeNumberFind.impossible(done);
    }
    boolean found = status[0] == CpSolverStatus.OPTIMAL || status[0] == CpSolverStatus.FEASIBLE;
    long[] best = found ? values(solver) : start;
    long bound = (long) Math.ceil(solver.bestObjectiveBound() - 1e-6);
    return new WholeNumberFind(best, Math.max(0, bound), done, true);
  }

  private long[] values(CpSolver solver) {
    return IntStream.range(0, columns.length).mapToLong(c -> solver.value(columns[c])).toArray();
  }

  private void hint(long[] values) {
    for (int column = 0; column < values.length; column++) {
      model.addHint(columns[column], values[column]);
    }
  }

  private static CpSolver solver(double units) {
    CpSolver solver = new CpSolver();
    // One worker searches the same way every time, and with the linear relaxation at full strength
    // it proves flows best; two workers leave that search out.
    solver
        .getParameters()
        .setNumWorkers(1)
        .setLinearizationLevel(2)
        .setRandomSeed(1)
        .setMaxDeterministicTime(units);
    return solver;
  }

  private void addRow(Program program, Program.Entries entries, int row) {
    int from = entries.first()[row];
    int size = entries.first()[row + 1] - from;
    IntVar[] summands = new IntVar[size];
    long[] coefficients = new long[size];
    for (int at = 0; at < size; at++) {
      summands[at] = columns[entries.column()[from + at]];
      coefficients[at] = entries.coefficient()[from + at];
    }
    model.addLinearConstraint(
        LinearExpr.weightedSum(summands, coefficients),
        program.rowLeast(row),
        program.rowMost(row));
  }
}
