package vestiary.allocation.solver;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * What a solver found.
 *
 * @param columns a whole value for each column; empty if none were found
 * @param values of each measure
 * @param bounds the least each measure can be where those before it are at their values; equal to
 *     the values where proven. After the first that differs the bounds say nothing and are 0
 * @param work units done in searches; what needs none is not counted
 * @param face what all answers with the same values have in common, where the relaxation told it
 */
public record Answer(
    long[] columns, long[] values, long[] bounds, double work, Optional<Face> face) {

  /**
   * All answers with the same values.
   *
   * @param shut columns that are 0 in each of them
   * @param whole whether every solution in which these are 0 is one of them
   */
  public record Face(BitSet shut, boolean whole) {}

  /** An answer of which nothing is known but itself. */
  public Answer(long[] columns, long[] values, long[] bounds, double work) {
    this(columns, values, bounds, work, Optional.empty());
  }

  /** An answer for which no search was needed. */
  public Answer(long[] columns, long[] values, long[] bounds) {
    this(columns, values, bounds, 0);
  }

  /** No values at all. */
  static Answer none(int tiers, double work) {
    return new Answer(new long[0], new long[tiers], new long[tiers], work);
  }

  /** Values of which nothing is proven. */
  public static Answer of(long[] columns, List<long[]> tiers) {
    long[] values = tiers.stream().mapToLong(costs -> measure(costs, columns)).toArray();
    return new Answer(columns, values, new long[values.length], 0);
  }

  public boolean isFound() {
    return columns.length > 0;
  }

  /** Whether each measure is at its least. */
  public boolean isProven() {
    return isFound() && Arrays.equals(values, bounds);
  }

  static long measure(long[] costs, long[] columns) {
    long sum = 0;
    for (int column = 0; column < costs.length; column++) {
      sum += costs[column] * columns[column];
    }
    return sum;
  }
}
