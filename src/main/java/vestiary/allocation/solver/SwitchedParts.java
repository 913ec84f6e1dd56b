package vestiary.allocation.solver;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/** Takes a program apart where its parts have nothing but switches in common. */
final class SwitchedParts {

  private final Program program;
  private final Program.Entries entries;
  private final BitSet switches;
  private final long[] most;
  private final int[] root;
  private final MPVariable[] columns;
  private final Map<Integer, SwitchedPart> parts = new TreeMap<>();

  private SwitchedParts(Program program) {
    this.program = program;
    this.entries = program.entries();
    this.switches = program.switches();
    this.most = IntStream.range(0, program.columns()).mapToLong(program::columnMost).toArray();
    this.root = IntStream.range(0, program.columns()).toArray();
    this.columns = new MPVariable[program.columns()];
  }

  /** The parts, those included that no switch changes anything for. */
  static List<SwitchedPart> of(Program program) {
    SwitchedParts parts = new SwitchedParts(program);
    parts.dropWhatIsZero();
    parts.join();
    parts.write();
    return new ArrayList<>(parts.parts.values());
  }

  /** Columns of which the sum may be no more than 0 tie nothing together. */
  private void dropWhatIsZero() {
    for (int row = 0; row < program.rows(); row++) {
      boolean zero = program.rowMost(row) == 0;
      for (int at = first(row); zero && at < end(row); at++) {
        zero = entries.coefficient()[at] > 0 && program.columnLeast(entries.column()[at]) == 0;
      }
      if (zero) {
        forEach(row, column -> most[column] = 0);
      }
    }
  }

  private void join() {
    for (int row = 0; row < program.rows(); row++) {
      int[] own = own(row);
      for (int at = 1; at < own.length; at++) {
        root[root(own[at])] = root(own[0]);
      }
    }
  }

  private void write() {
    for (int column = 0; column < columns.length; column++) {
      if (isOwn(column)) {
        columns[column] = part(column).column(program.columnLeast(column), most[column]);
      }
    }
    for (int row = 0; row < program.rows(); row++) {
      int[] own = own(row);
      if (own.length > 0) {
        write(row, part(own[0]));
      }
    }
  }

  private void write(int row, SwitchedPart part) {
    MPConstraint sum =
        part.rows()
            .makeConstraint(
                program.rowLeast(row) <= -Program.UNBOUNDED
                    ? -MPSolver.infinity()
                    : program.rowLeast(row),
                program.rowMost(row) >= Program.UNBOUNDED
                    ? MPSolver.infinity()
                    : program.rowMost(row),
                "");
    for (int at = first(row); at < end(row); at++) {
      int column = entries.column()[at];
      if (switches.get(column)) {
        sum.setCoefficient(
            part.switched(column, program.columnMost(column)), entries.coefficient()[at]);
      } else if (columns[column] != null) {
        sum.setCoefficient(columns[column], entries.coefficient()[at]);
      }
    }
  }

  private SwitchedPart part(int column) {
    return parts.computeIfAbsent(root(column), unknown -> new SwitchedPart());
  }

  private boolean isOwn(int column) {
    return !switches.get(column) && most[column] > 0;
  }

  private int[] own(int row) {
    return IntStream.range(first(row), end(row))
        .map(at -> entries.column()[at])
        .filter(this::isOwn)
        .toArray();
  }

  private void forEach(int row, IntConsumer action) {
    IntStream.range(first(row), end(row)).map(at -> entries.column()[at]).forEach(action);
  }

  private int root(int column) {
    int at = column;
    while (root[at] != at) {
      root[at] = root[root[at]];
      at = root[at];
    }
    return at;
  }

  private int first(int row) {
    return entries.first()[row];
  }

  private int end(int row) {
    return entries.first()[row + 1];
  }
}
