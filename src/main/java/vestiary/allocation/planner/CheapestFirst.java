package vestiary.allocation.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Puts rows and columns together, the cheapest first, then in order of rows and columns. */
final class CheapestFirst {

  static final int NEVER = Integer.MAX_VALUE;

  private record Pair(int row, int column, int cost) {}

  /** What it costs to put a row and a column together; {@link #NEVER} if that cannot be. */
  interface Cost {
    int of(int row, int column);
  }

  /** Told of each pair; answers whether it was put together. */
  interface Taking {
    boolean take(int row, int column);
  }

  private CheapestFirst() {}

  /** The column of each row, -1 where none was left. */
  static int[] of(int rows, int columns, Cost cost) {
    boolean[] taken = new boolean[columns];
    return of(
        rows,
        columns,
        cost,
        (row, column) -> {
          boolean free = !taken[column];
          taken[column] = true;
          return free;
        });
  }

  /** The same where columns may stand in one another's way. */
  static int[] of(int rows, int columns, Cost cost, Taking taking) {
    List<Pair> pairs = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        int price = cost.of(row, column);
        if (price != NEVER) {
          pairs.add(new Pair(row, column, price));
        }
      }
    }
    pairs.sort(Comparator.comparing(Pair::cost));
    int[] columnOf = new int[rows];
    Arrays.fill(columnOf, -1);
    for (Pair pair : pairs) {
      if (columnOf[pair.row()] < 0 && taking.take(pair.row(), pair.column())) {
        columnOf[pair.row()] = pair.column();
      }
    }
    return columnOf;
  }
}
