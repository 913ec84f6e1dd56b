package vestiary.allocation.solver;

import java.util.ArrayList;
import java.util.Arrays;
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
 * @param faces what is left when the first is at its least, the first two, and so on
 * @param solution of the relaxation on the last face; empty if a measure was not whole
 */
record Descent(
    Program program, List<long[]> tiers, List<Long> least, List<OnFace> faces, double[] solution) {

  /** What is left of a program, and what all its solutions have in common. */
  record OnFace(Program program, Answer.Face face) {

    /**
     * The answer on the face as one of the whole program.
     *
     * @param rest by the measures that did not lead here
     */
    Answer with(Answer rest, List<long[]> tiers, double work) {
      int settled = tiers.size() - rest.values().length;
      long[] values = tiers.stream().mapToLong(c -> Answer.measure(c, rest.columns())).toArray();
      long[] bounds = values.clone();
      System.arraycopy(rest.bounds(), 0, bounds, settled, rest.bounds().length);
      boolean isAll = face.whole() && rest.values().length == 0;
      return new Answer(
          rest.columns(), values, bounds, work, Optional.of(new Answer.Face(face.shut(), isAll)));
    }
  }

  static Descent down(Program program, List<long[]> tiers, Work work) {
    List<Long> least = new ArrayList<>();
    List<OnFace> faces = new ArrayList<>();
    double[] solution = new double[0];
    try (LinearFace face = new LinearFace(program)) {
      for (long[] costs : tiers) {
        boolean free = LongStream.of(costs).allMatch(cost -> cost == 0);
        if (free && !least.isEmpty()) {
          least.add(0L);
          faces.add(faces.get(faces.size() - 1));
          continue;
        }
        double value = face.minimise(costs, work);
        if (Double.isNaN(value)) {
          return new Descent(program, tiers, least, faces, new double[0]);
        }
        least.add((long) Math.ceil(value - 1e-6));
        if (!LinearFace.isWhole(value)) {
          return new Descent(program, tiers, least, faces, new double[0]);
        }
        solution = face.values();
        face.narrow();
        faces.add(new OnFace(face.narrowed(program), face.face()));
      }
    }
    return new Descent(program, tiers, least, faces, solution);
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
    Answer.Face last = faces.get(faces.size() - 1).face();
    return Optional.of(new Answer(columns, values, values.clone(), 0, Optional.of(last)));
  }
}
