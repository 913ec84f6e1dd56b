package vestiary.allocation.solver;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * Measure by measure on the faces of the relaxation, which for flows is nearly always whole and so
 * proves itself; what is left goes to a search over whole numbers, with a row for each measure
 * already settled.
 */
final class NativeSolver implements Solver {

  /** Of the work allowed, what the search for the best switches may take. */
  private static final double SWITCHING = 0.9;

  @Override
  public Answer minimise(Program program, List<long[]> tiers, long[] hint, Work work) {
    List<Long> least = new ArrayList<>();
    double[] relaxed;
    try (LinearFace face = new LinearFace(program)) {
      relaxed = descend(face, tiers, least, work);
    }
    if (relaxed.length > 0 && DoubleStream.of(relaxed).allMatch(v -> v == Math.rint(v))) {
      long[] columns = DoubleStream.of(relaxed).mapToLong(Math::round).toArray();
      long[] values = tiers.stream().mapToLong(c -> Answer.measure(c, columns)).toArray();
      if (program.admits(columns) && least.equals(boxed(values))) {
        return new Answer(columns, values, values.clone(), 0);
      }
    }
    int switching = switchingTiers(program, tiers);
    if (switching == 0 || work.units() == 0) {
      return new TieredSearch(program, tiers, WholeNumberSearch::search).run(least, hint, work);
    }
    boolean sound = hint.length == program.columns() && program.admits(hint);
    SwitchSearch.Found found =
        new SwitchSearch(program, tiers.subList(0, switching), sound ? hint : new long[0])
            .run(work.withUnits(work.units() * SWITCHING));
    Program stronger = program.copy();
    found.wanted().forEach(stronger::requireAny);
    Answer answer =
        new TieredSearch(stronger, tiers, WholeNumberSearch::search)
            .run(
                higher(found.least(), least),
                found.columns().length > 0 ? found.columns() : hint,
                work.withUnits(work.units() - found.work()));
    return new Answer(
        answer.columns(), answer.values(), answer.bounds(), answer.work() + found.work());
  }

  /** How many of the first measures cost switches and nothing else. */
  private static int switchingTiers(Program program, List<long[]> tiers) {
    BitSet switches = program.switches();
    int number = 0;
    while (number < tiers.size()
        && !switches.isEmpty()
        && costly(tiers.get(number)).allMatch(switches::get)) {
      number++;
    }
    return number;
  }

  private static IntStream costly(long[] costs) {
    return IntStream.range(0, costs.length).filter(column -> costs[column] != 0);
  }

  /** Of two lists of the least that measures can be the one that says more. */
  private static List<Long> higher(List<Long> one, List<Long> other) {
    for (int tier = 0; tier < Math.min(one.size(), other.size()); tier++) {
      int order = one.get(tier).compareTo(other.get(tier));
      if (order != 0) {
        return order > 0 ? one : other;
      }
    }
    return one.size() > other.size() ? one : other;
  }

  /**
   * The last solution, empty if a measure was not whole; fills in the least values, that one's
   * rounded up being the last.
   */
  private static double[] descend(
      LinearFace face, List<long[]> tiers, List<Long> least, Work work) {
    double[] solution = new double[0];
    for (long[] costs : tiers) {
      boolean free = LongStream.of(costs).allMatch(cost -> cost == 0);
      if (free && !least.isEmpty()) {
        least.add(0L);
        continue;
      }
      double value = face.minimise(costs, work);
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
