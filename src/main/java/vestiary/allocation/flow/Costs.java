package vestiary.allocation.flow;

import java.util.Arrays;

/** For each measure, what the columns of a program add to it. */
final class Costs {

  private final int[][] columns = new int[Measure.NUMBER][16];
  private final int[][] amounts = new int[Measure.NUMBER][16];
  private final int[] used = new int[Measure.NUMBER];

  void add(Measure measure, int column, int amount) {
    int at = measure.ordinal();
    if (used[at] == columns[at].length) {
      columns[at] = Arrays.copyOf(columns[at], 2 * used[at]);
      amounts[at] = Arrays.copyOf(amounts[at], 2 * used[at]);
    }
    columns[at][used[at]] = column;
    amounts[at][used[at]++] = amount;
  }

  void forEach(Measure measure, Entry action) {
    int at = measure.ordinal();
    for (int entry = 0; entry < used[at]; entry++) {
      action.accept(columns[at][entry], amounts[at][entry]);
    }
  }

  /** Takes a column and an amount. */
  interface Entry {
    void accept(int column, int amount);
  }

  long[] of(Measure measure, int size) {
    long[] costs = new long[size];
    int at = measure.ordinal();
    for (int entry = 0; entry < used[at]; entry++) {
      costs[columns[at][entry]] += amounts[at][entry];
    }
    return costs;
  }
}
