package vestiary.allocation.solver;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/** Needs no natives and is slower: a search over whole numbers for every measure. */
final class PureJavaSolver implements Solver {

  @Override
  public Answer minimise(Program program, List<long[]> tiers, long[] hint, Work work) {
    return new TieredSearch(program, tiers, PureJavaSolver::search).run(List.of(), hint, work);
  }

  private static WholeNumberFind search(Program program, long[] costs, long[] start, Work work) {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    Variable[] columns = new Variable[program.columns()];
    for (int column = 0; column < columns.length; column++) {
      columns[column] =
          model
              .newVariable("c" + column)
              .integer()
              .lower(program.columnLeast(column))
              .upper(program.columnMost(column))
              .weight(costs[column]);
    }
    Program.Entries entries = program.entries();
    IntStream.range(0, program.rows())
        .forEach(row -> addRow(model, columns, program, entries, row));
    Optimisation.Result result = model.minimise();
    if (result.getState().isFeasible()) {
      long[] values =
          IntStream.range(0, columns.length)
              .mapToLong(c -> Math.round(result.doubleValue(c)))
              .toArray();
      long bound = result.getState().isOptimal() ? Answer.measure(costs, values) : 0;
      return new WholeNumberFind(values, bound, 0, true);
    }
    return WholeNumberFind.impossible(0);
  }

  private static void addRow(
      ExpressionsBasedModel model,
      Variable[] columns,
      Program program,
      Program.Entries entries,
      int row) {
    Expression sum = model.newExpression("r" + row);
    for (int at = entries.first()[row]; at < entries.first()[row + 1]; at++) {
      sum.set(columns[entries.column()[at]], BigDecimal.valueOf(entries.coefficient()[at]));
    }
    if (program.rowLeast(row) > -Program.UNBOUNDED) {
      sum.lower(program.rowLeast(row));
    }
    if (program.rowMost(row) < Program.UNBOUNDED) {
      sum.upper(program.rowMost(row));
    }
  }
}
