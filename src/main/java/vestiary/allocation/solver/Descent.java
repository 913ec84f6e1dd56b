package vestiary.allocation.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;

/**
 * The relaxation made the least it can be by one measure after the other, as far as their values
 * are whole.
 *
 * @param least of the first measures, each where those before it are at theirs; that of the first
 *     which was not whole is the last, rounded up
 * @param narrowings by each of the first measures; the first so many of them are a face
 * @param solution of the relaxation on the last face; empty if a measure was not whole
 */
record Descent(
    Program program,
    List<long[]> tiers,
    List<Long> least,
    List<Narrowing> narrowings,
    double[] solution) {

  static Descent down(Program program, List<long[]> tiers, Work work) {
    List<Long> least = new ArrayList<>();
    List<Narrowing> narrowings = new ArrayList<>();
    double[] solution = new double[0];
    try (LinearFace face = new LinearFace(program)) {
      for (long[] costs : tiers) {
        boolean free = LongStream.of(costs).allMatch(cost -> cost == 0);
        if (free && !least.isEmpty()) {
          least.add(0L);
          narrowings.add(Narrowing.NOTHING);
          continue;
        }
        double value = face.minimise(costs, work);
        if (!Double.isNaN(value)) {
          least.add((long) Math.ceil(value - 1e-6));
        }
        if (!LinearFace.isWhole(value)) {
          return new Descent(program, tiers, least, narrowings, new double[0]);
        }
        solution = face.values();
        narrowings.add(face.narrow());
      }
    }
    return new Descent(program, tiers, least, narrowings, solution);
  }

  /** Whether the same face was left by one measure less. */
  boolean isLeftAsItWas(int settled) {
    return narrowings.get(settled - 1).isNothing();
  }

  /** The program with nothing left in it but the face of the first measures. */
  Program narrowed(int settled) {
    Program narrowed = program.copy();
    narrowings.subList(0, settled).forEach(narrowing -> narrowing.narrow(narrowed));
    return narrowed;
  }

  /**
   * An answer on the face of the first measures as one of the whole program.
   *
   * @param rest by the other measures
   */
  Answer onFace(int settled, Answer rest, double work) {
    long[] values = tiers.stream().mapToLong(c -> Answer.measure(c, rest.columns())).toArray();
    long[] bounds = values.clone();
    System.arraycopy(rest.bounds(), 0, bounds, settled, rest.bounds().length);
    return new Answer(rest.columns(), values, bounds, work, Optional.of(face(settled)));
  }

  private Answer.Face face(int settled) {
    List<Narrowing> these = narrowings.subList(0, settled);
    BitSet shut = new BitSet();
    these.forEach(narrowing -> narrowing.shut(shut));
    boolean isAll = settled == tiers.size() && these.stream().allMatch(Narrowing::onlyShuts);
    return new Answer.Face(shut, isAll);
  }

  /** The answer, if the relaxation found whole values of itself. */
  Optional<Answer> findWhole() {
    if (solution.length == 0 || !DoubleStream.of(solution).allMatch(v -> v == Math.rint(v))) {
      return Optional.empty();
    }
    long[] columns = DoubleStream.of(solution).mapToLong(Math::round).toArray();
    long[] values = tiers.stream().mapToLong(c -> Answer.measure(c, columns)).toArray();
    long[] found = least.stream().mapToLong(Long::longValue).toArray();
    if (!program.admits(columns) || !Arrays.equals(found, values)) {
      return Optional.empty();
    }
    return Optional.of(
        new Answer(columns, values, values.clone(), 0, Optional.of(face(tiers.size()))));
  }
}
