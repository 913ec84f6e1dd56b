package vestiary.allocation.planner;

import java.util.Arrays;

/**
 * Gives each row a column of its own so that the sum of costs is least. Cost: rows squared times
 * columns.
 *
 * <p>Source: H. W. Kuhn, "The Hungarian method for the assignment problem" (1955; from memory).
 */
final class LeastCost {

  private LeastCost() {}

  /**
   * The column of each row.
   *
   * @param costs of each row in each column; no fewer columns than rows, sums below 2^61
   */
  static int[] of(long[][] costs) {
    int rows = costs.length;
    int columns = rows == 0 ? 0 : costs[0].length;
    long[] rowPrice = new long[rows + 1];
    long[] columnPrice = new long[columns + 1];
    int[] rowOf = new int[columns + 1];
    int[] before = new int[columns + 1];
    for (int row = 1; row <= rows; row++) {
      rowOf[0] = row;
      int column = 0;
      long[] slack = new long[columns + 1];
      boolean[] done = new boolean[columns + 1];
      Arrays.fill(slack, Long.MAX_VALUE);
      do {
        done[column] = true;
        column = step(costs, column, rowOf, rowPrice, columnPrice, slack, before, done);
      } while (rowOf[column] != 0);
      while (column != 0) {
        rowOf[column] = rowOf[before[column]];
        column = before[column];
      }
    }
    int[] columnOf = new int[rows];
    for (int column = 1; column <= columns; column++) {
      if (rowOf[column] > 0) {
        columnOf[rowOf[column] - 1] = column - 1;
      }
    }
    return columnOf;
  }

  /** The next column on the cheapest way, prices being raised to it. */
  private static int step(
      long[][] costs,
      int column,
      int[] rowOf,
      long[] rowPrice,
      long[] columnPrice,
      long[] slack,
      int[] before,
      boolean[] done) {
    int row = rowOf[column];
    long least = Long.MAX_VALUE;
    int next = 0;
    for (int other = 1; other < columnPrice.length; other++) {
      if (!done[other]) {
        long cost = costs[row - 1][other - 1] - rowPrice[row] - columnPrice[other];
        if (cost < slack[other]) {
          slack[other] = cost;
          before[other] = column;
        }
        if (slack[other] < least) {
          least = slack[other];
          next = other;
        }
      }
    }
    for (int other = 0; other < columnPrice.length; other++) {
      if (done[other]) {
        rowPrice[rowOf[other]] += least;
        columnPrice[other] -= least;
      } else {
        slack[other] -= least;
      }
    }
    return next;
  }
}
