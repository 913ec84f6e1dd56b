package vestiary.allocation.solver;

import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.BitSet;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One part of a program that has nothing but switches in common with the rest, without the demand
 * for whole numbers. Says whether it has a solution with some switches on, and if not, which others
 * are wanted.
 */
final class SwitchedPart implements AutoCloseable {

  /** Much less than what lacks where a switch is off that carries a hundred. */
  private static final double LACKING = 1e-4;

  private static final double TOLERANCE = 1e-7;

  /** Of a solution found anew after a change, for each row or column; measured. */
  private static final double WORK = 6e-7;

  private final MPSolver solver = MPSolver.createSolver("GLOP");
  private final SortedMap<Integer, MPVariable> switches = new TreeMap<>();
  private double done;

  SwitchedPart() {
    // Only bounds of switches change from one question to the next, which the dual method takes up
    // where it was.
    solver.setSolverSpecificParametersAsString("use_preprocessing: false use_dual_simplex: true");
    solver.objective().setMinimization();
  }

  MPVariable column(double least, double most) {
    return solver.makeNumVar(least, most, "");
  }

  MPVariable switched(int column, double most) {
    return switches.computeIfAbsent(
        column,
        unknown -> {
          MPVariable variable = solver.makeNumVar(0, most, "");
          solver.objective().setCoefficient(variable, 1);
          return variable;
        });
  }

  MPSolver rows() {
    return solver;
  }

  /** Whether nothing is lacking with these switches on; also where that cannot be told. */
  boolean worksWith(BitSet on) {
    int already = 0;
    for (var one : switches.entrySet()) {
      boolean isOn = on.get(one.getKey()) && one.getValue().ub() > 0;
      already += isOn ? 1 : 0;
      one.getValue().setLb(isOn ? 1 : 0);
    }
    done += WORK * (solver.numVariables() + solver.numConstraints());
    MPSolver.ResultStatus status = solver.solve();
    return status != MPSolver.ResultStatus.OPTIMAL
        || solver.objective().value() - already <= LACKING;
  }

  /** After something was lacking: switches that were off, of which at least one must be on. */
  BitSet wanted(BitSet on) {
    BitSet wanted = new BitSet();
    switches.forEach(
        (column, variable) ->
            wanted.set(
                column,
                !on.get(column) && variable.ub() > 0 && variable.reducedCost() < 1 - TOLERANCE));
    return wanted;
  }

  /** Units of work since it was asked last. */
  double takeWork() {
    double work = done;
    done = 0;
    return work;
  }

  @Override
  public void close() {
    solver.delete();
  }
}
