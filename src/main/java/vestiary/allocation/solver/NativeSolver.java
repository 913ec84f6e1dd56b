package vestiary.allocation.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;

/**
 * Measure by measure on the faces of the relaxation, which for flows is nearly always whole and so
 * proves itself; what is left goes to a search over whole numbers, with a row for each measure
 * already settled.
 */
final class NativeSolver implements Solver {

  @Override
  public Answer minimise(Program program, List<long[]> tiers, long[] hint, Work work) {
    List<Long> least = new ArrayList<>();
    double[] relaxed;
    try (LinearFace face = new LinearFace(program)) {
      relaxed = descend(face, tiers, least);
    }
    if (relaxed.length > 0 && DoubleStream.of(relaxed).allMatch(v -> v == Math.rint(v))) {
      long[] columns = DoubleStream.of(relaxed).mapToLong(Math::round).toArray();
      long[] values = tiers.stream().mapToLong(c -> Answer.measure(c, columns)).toArray();
      if (program.admits(columns) && least.equals(boxed(values))) {
        return new Answer(columns, values, values.clone());
      }
    }
    return new TieredSearch(program, tiers, WholeNumberSearch::search).run(least, hint, work);
  }

  /**
   * The last solution, empty if a measure was not whole; fills in the least values, that one's
   * rounded up being the last.
   */
  private static double[] descend(LinearFace face, List<long[]> tiers, List<Long> least) {
    double[] solution = new double[0];
    for (long[] costs : tiers) {
      boolean free = LongStream.of(costs).allMatch(cost -> cost == 0);
      if (free && !least.isEmpty()) {
        least.add(0L);
        continue;
      }
      double value = face.minimise(costs);
      if (Double.isNaN(value)) {
        return new double[0];
      }
      least.add((long) Math.ceil(value - 1e-6));
      if (!LinearFace.isWhole(value)) {
        return new double[0];
      }
      solution = face.values();
      if (least.size() < tiers.size()) {
        face.narrow();
      }
    }
    return solution;
  }

  private static List<Long> boxed(long[] values) {
    return LongStream.of(values).boxed().toList();
  }
}
