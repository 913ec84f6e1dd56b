package vestiary.allocation.solver;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** Wells and villages: each village is to have water from wells that are dug, at the least cost. */
class SwitchSearchTest {

  private static final int WELLS = 9;
  private static final int VILLAGES = 7;

  @RepeatedTest(40)
  void switches_cost_what_trying_every_choice_of_them_finds(RepetitionInfo repetition) {
    Wells wells = new Wells(repetition.getCurrentRepetition());

    Answer answer = Solvers.best().minimise(wells.program, wells.tiers, new long[0], Work.of(20));

    assertTrue(answer.isProven());
    assertTrue(wells.program.admits(answer.columns()));
    assertArrayEquals(wells.leastByTryingAll(), answer.values());
  }

  @RepeatedTest(10)
  void a_search_that_is_cancelled_answers_with_what_it_began_with(RepetitionInfo repetition) {
    Wells wells = new Wells(repetition.getCurrentRepetition());
    Answer known = Solvers.best().minimise(wells.program, wells.tiers, new long[0], Work.of(20));

    Answer answer =
        Solvers.best()
            .minimise(wells.program, wells.tiers, known.columns(), new Work(1000, () -> true));

    assertArrayEquals(known.values(), answer.values());
  }

  @Test
  void what_runs_beside_is_stopped_when_whoever_called_says_so() {
    CountDownLatch stopped = new CountDownLatch(1);

    Interruptible.run(() -> await(stopped), stopped::countDown, () -> true);

    assertEquals(0, stopped.getCount());
  }

  @Test
  void what_runs_beside_is_over_before_the_fault_of_whoever_called_is_told() {
    CountDownLatch stopped = new CountDownLatch(1);
    CountDownLatch over = new CountDownLatch(1);
    Runnable run =
        () -> {
          await(stopped);
          over.countDown();
        };

    assertThrows(
        IllegalStateException.class,
        () ->
            Interruptible.run(
                run,
                stopped::countDown,
                () -> {
                  throw new IllegalStateException("the database is gone");
                }));

    assertEquals(0, over.getCount());
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException fault) {
      throw new IllegalStateException(fault);
    }
  }

  /** Some wells reach some villages; each well has water for a few. */
  private static final class Wells {

    private final Program program = new Program();
    private final int[] dug = new int[WELLS];
    private final long[] minutes = new long[WELLS];
    private final int[] water = new int[WELLS];
    private final boolean[][] reaches = new boolean[WELLS][VILLAGES];
    private final List<long[]> tiers;

    Wells(long seed) {
      Random random = new Random(seed);
      int[] served = new int[VILLAGES];
      for (int village = 0; village < VILLAGES; village++) {
        served[village] = program.row(1, Program.UNBOUNDED);
      }
      for (int well = 0; well < WELLS; well++) {
        dug[well] = program.switchColumn();
        // The last three reach everybody, so that there is always a way.
        boolean last = well >= WELLS - 3;
        water[well] = last ? 3 : 1 + random.nextInt(3);
        minutes[well] = 1 + random.nextInt(30);
        int all = program.row(-Program.UNBOUNDED, 0);
        program.put(all, dug[well], -water[well]);
        for (int village = 0; village < VILLAGES; village++) {
          reaches[well][village] = last || random.nextInt(3) == 0;
          if (reaches[well][village]) {
            int pipe = program.column(0, 1);
            program.put(all, pipe, 1);
            program.put(served[village], pipe, 1);
          }
        }
      }
      long[] number = new long[program.columns()];
      long[] driven = new long[program.columns()];
      for (int well = 0; well < WELLS; well++) {
        number[dug[well]] = 1;
        driven[dug[well]] = minutes[well];
      }
      tiers = List.of(number, driven);
    }

    long[] leastByTryingAll() {
      long[] least = {Long.MAX_VALUE, Long.MAX_VALUE};
      for (int chosen = 0; chosen < 1 << WELLS; chosen++) {
        long number = Integer.bitCount(chosen);
        long driven = 0;
        for (int well = 0; well < WELLS; well++) {
          driven += (chosen >> well & 1) * minutes[well];
        }
        boolean better = number < least[0] || number == least[0] && driven < least[1];
        if (better && serves(chosen, 0, water.clone())) {
          least = new long[] {number, driven};
        }
      }
      return least;
    }

    private boolean serves(int chosen, int village, int[] left) {
      if (village == VILLAGES) {
        return true;
      }
      for (int well = 0; well < WELLS; well++) {
        if ((chosen >> well & 1) == 1 && reaches[well][village] && left[well] > 0) {
          left[well]--;
          boolean all = serves(chosen, village + 1, left);
          left[well]++;
          if (all) {
            return true;
          }
        }
      }
      return false;
    }
  }
}
