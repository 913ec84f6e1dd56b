package vestiary.allocation.solver;

import java.util.BitSet;
import java.util.stream.LongStream;

/**
 * What one measure at its least fixes on a face.
 *
 * @param columns which all solutions that are best by it have at one value
 * @param values theirs, in the same order
 * @param rows which all these have at one of their bounds
 * @param sums theirs, in the same order
 */
record Narrowing(int[] columns, long[] values, int[] rows, long[] sums) {

  /** Of a measure that is the same for all. */
  static final Narrowing NOTHING = new Narrowing(new int[0], new long[0], new int[0], new long[0]);

  boolean isNothing() {
    return columns.length == 0 && rows.length == 0;
  }

  /** Whether it fixes no more than that columns are 0. */
  boolean onlyShuts() {
    return rows.length == 0 && LongStream.of(values).allMatch(value -> value == 0);
  }

  /** Adds the columns that it fixes at 0. */
  void shut(BitSet shut) {
    for (int at = 0; at < columns.length; at++) {
      shut.set(columns[at], values[at] == 0);
    }
  }

  void narrow(Program program) {
    for (int at = 0; at < columns.length; at++) {
      program.boundColumn(columns[at], values[at], values[at]);
    }
    for (int at = 0; at < rows.length; at++) {
      program.bound(rows[at], sums[at], sums[at]);
    }
  }
}
