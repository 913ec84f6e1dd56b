package vestiary.allocation.solver;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Friends and tables: each table takes three friends who all know each other, or none, and each
 * friend sits at one at most. Over circles of friends the relaxation is not whole, and what is best
 * must be searched for on its faces.
 */
class FacesTest {

  private static final int CASES = 120;
  private static final int FRIENDS = 7;
  private static final int TABLES = 9;

  @Test
  void every_measure_is_what_trying_all_finds() {
    int searched = 0;
    for (int seed = 0; seed < CASES; seed++) {
      Tables tables = new Tables(seed);

      Answer answer =
          Solvers.best().minimise(tables.program, tables.tiers, new long[0], Work.of(20));

      assertTrue(answer.isProven(), "case " + seed);
      assertTrue(tables.program.admits(answer.columns()), "case " + seed);
      assertArrayEquals(tables.leastByTryingAll(), answer.values(), "case " + seed);
      searched += answer.work() > 0 ? 1 : 0;
    }
    assertTrue(searched > CASES / 10, "only %d were not whole".formatted(searched));
  }

  @Test
  void what_is_said_to_be_shut_is_in_no_answer_that_is_as_good() {
    int told = 0;
    for (int seed = 0; seed < CASES; seed++) {
      Tables tables = new Tables(seed);
      Answer answer =
          Solvers.best().minimise(tables.program, tables.tiers, new long[0], Work.of(20));
      if (answer.face().isPresent()) {
        tables.holdFace(answer, "case " + seed);
        told += answer.face().get().shut().cardinality();
      }
    }
    assertTrue(told > CASES, "only %d columns were shut".formatted(told));
  }

  private static final class Tables {

    private final Program program = new Program();
    private final List<long[]> tiers;

    Tables(long seed) {
      Random random = new Random(seed);
      int[] seat = IntStream.range(0, FRIENDS).map(friend -> program.row(1, 1)).toArray();
      long[] alone = new long[FRIENDS + TABLES];
      long[] noise = new long[FRIENDS + TABLES];
      long[] walk = new long[FRIENDS + TABLES];
      for (int friend = 0; friend < FRIENDS; friend++) {
        program.put(seat[friend], program.column(0, 1), 1);
        alone[friend] = 1;
      }
      for (int table = FRIENDS; table < FRIENDS + TABLES; table++) {
        int column = program.column(0, 1);
        random
            .ints(0, FRIENDS)
            .distinct()
            .limit(2 + random.nextInt(2))
            .forEach(friend -> program.put(seat[friend], column, 1));
        noise[table] = random.nextInt(3);
        walk[table] = random.nextInt(9);
      }
      tiers = List.of(alone, noise, walk);
    }

    long[] leastByTryingAll() {
      long[] least = null;
      for (int chosen = 0; chosen < 1 << FRIENDS + TABLES; chosen++) {
        long[] columns = columns(chosen);
        if (program.admits(columns)) {
          long[] values = values(columns);
          least = least == null || Arrays.compare(values, least) < 0 ? values : least;
        }
      }
      return least;
    }

    void holdFace(Answer answer, String name) {
      BitSet shut = answer.face().orElseThrow().shut();
      for (int chosen = 0; chosen < 1 << FRIENDS + TABLES; chosen++) {
        long[] columns = columns(chosen);
        if (!program.admits(columns)) {
          continue;
        }
        boolean isAsGood = Arrays.equals(answer.values(), values(columns));
        boolean isOpen = shut.stream().allMatch(column -> columns[column] == 0);
        if (isAsGood) {
          assertTrue(isOpen, name);
        }
        if (answer.face().get().whole()) {
          assertEquals(isOpen, isAsGood, name);
        }
      }
    }

    private long[] values(long[] columns) {
      return tiers.stream().mapToLong(costs -> Answer.measure(costs, columns)).toArray();
    }

    private static long[] columns(int chosen) {
      return IntStream.range(0, FRIENDS + TABLES).mapToLong(at -> chosen >> at & 1).toArray();
    }
  }
}
