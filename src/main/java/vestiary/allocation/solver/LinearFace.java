package vestiary.allocation.solver;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The program without the demand for whole numbers, narrowed after each measure to all solutions
 * that are best by it: columns with a reduced cost stay at their bound, rows with a price at
 * theirs. By complementary slackness these are exactly the best ones, and no row is added, so that
 * a flow stays a flow.
 *
 * <p>Source: complementary slackness, as in any textbook of linear programming.
 */
final class LinearFace implements AutoCloseable {

  private static final double TOLERANCE = 1e-6;

  /** Smaller ones are solved in less than a second. */
  private static final int MANY_COLUMNS = 10_000;

  private final MPSolver solver = MPSolver.createSolver("GLOP");
  private final MPVariable[] columns;
  private final MPConstraint[] rows;
  private final double[] least;
  private final double[] most;

  LinearFace(Program program) {
    columns = new MPVariable[program.columns()];
    rows = new MPConstraint[program.rows()];
    least = new double[columns.length];
    most = new double[columns.length];
    for (int column = 0; column < columns.length; column++) {
      least[column] = program.columnLeast(column);
      most[column] = program.columnMost(column);
      columns[column] = solver.makeNumVar(least[column], most[column], "");
    }
    Program.Entries entries = program.entries();
    for (int row = 0; row < rows.length; row++) {
      rows[row] =
          solver.makeConstraint(open(program.rowLeast(row)), open(program.rowMost(row)), "");
      for (int at = entries.first()[row]; at < entries.first()[row + 1]; at++) {
        rows[row].setCoefficient(columns[entries.column()[at]], entries.coefficient()[at]);
      }
    }
  }

  /**
   * The least value of a measure on the face; not a number if the face is empty, or on stopping.
   */
  double minimise(long[] costs, Work work) {
    MPObjective objective = solver.objective();
    objective.clear();
    for (int column = 0; column < costs.length; column++) {
      if (costs[column] != 0) {
        objective.setCoefficient(columns[column], costs[column]);
      }
    }
    objective.setMinimization();
    return solve(work) == MPSolver.ResultStatus.OPTIMAL ? objective.value() : Double.NaN;
  }

  private MPSolver.ResultStatus solve(Work work) {
    if (columns.length < MANY_COLUMNS) {
      return solver.solve();
    }
    MPSolver.ResultStatus[] status = new MPSolver.ResultStatus[1];
    Interruptible.run(() -> status[0] = solver.solve(), solver::interruptSolve, work.isCancelled());
    return status[0];
  }

  /** Narrows the face to what is best by the measure minimised last; answers what that fixed. */
  Narrowing narrow() {
    // All is read before anything is changed, for a change makes the solution unreadable.
    double[] values = values();
    double[] reduced = Arrays.stream(columns).mapToDouble(MPVariable::reducedCost).toArray();
    double[] prices = Arrays.stream(rows).mapToDouble(MPConstraint::dualValue).toArray();
    int[] fixed =
        IntStream.range(0, columns.length)
            .filter(c -> most[c] > least[c] && Math.abs(reduced[c]) > TOLERANCE)
            .toArray();
    int[] full =
        IntStream.range(0, rows.length)
            .filter(r -> rows[r].lb() < rows[r].ub() && Math.abs(prices[r]) > TOLERANCE)
            .toArray();
    return new Narrowing(
        fixed,
        IntStream.of(fixed).mapToLong(column -> fix(column, values[column])).toArray(),
        full,
        IntStream.of(full).mapToLong(row -> fill(rows[row], prices[row] > 0)).toArray());
  }

  /** The values of the solution found last, whole where they are all but whole. */
  double[] values() {
    double[] values = new double[columns.length];
    for (int column = 0; column < columns.length; column++) {
      double value = columns[column].solutionValue();
      values[column] = isWhole(value) ? Math.rint(value) : value;
    }
    return values;
  }

  static boolean isWhole(double value) {
    return Math.abs(value - Math.rint(value)) <= TOLERANCE;
  }

  @Override
  public void close() {
    solver.delete();
  }

  private long fix(int column, double value) {
    double bound = value - least[column] < most[column] - value ? least[column] : most[column];
    least[column] = bound;
    most[column] = bound;
    columns[column].setBounds(bound, bound);
    return (long) bound;
  }

  private static long fill(MPConstraint row, boolean isLeast) {
    double bound = isLeast ? row.lb() : row.ub();
    row.setBounds(bound, bound);
    return (long) bound;
  }

  private static double open(long bound) {
    return Math.abs(bound) >= Program.UNBOUNDED ? Math.copySign(MPSolver.infinity(), bound) : bound;
  }
}
