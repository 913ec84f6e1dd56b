package vestiary.users;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import vestiary.problem.Refused;

class TurnsTest {

  private static final int MOST_WAITING = 10;

  private final ExecutorService people = Executors.newCachedThreadPool();
  private final CountDownLatch end = new CountDownLatch(1);

  @AfterEach
  void letAllGo() {
    end.countDown();
    people.shutdown();
  }

  @Test
  void whoever_comes_when_twenty_wait_is_sent_away_and_those_who_waited_have_their_turn()
      throws InterruptedException, ExecutionException {
    Turns turns = new Turns(1, 3);
    List<Future<Integer>> waiting = crowd(turns);

    assertThrows(Refused.class, turns::refuseIfCrowded);
    assertThrows(Refused.class, () -> turns.take(() -> "no turn"));

    end.countDown();
    for (Future<Integer> one : waiting) {
      one.get();
    }
    assertEquals("a turn", turns.take(() -> "a turn"));
  }

  @Test
  void a_turn_that_fails_is_given_back() {
    Turns turns = new Turns(1, 3);

    assertThrows(IllegalStateException.class, () -> turns.take(TurnsTest::fail));

    assertEquals("the next", turns.take(() -> "the next"));
    assertDoesNotThrow(turns::refuseIfCrowded);
  }

  private static String fail() {
    throw new IllegalStateException("a fault");
  }

  /** One whose turn lasts until the end, and as many as may wait behind it. */
  private List<Future<Integer>> crowd(Turns turns) throws InterruptedException {
    CountDownLatch begun = new CountDownLatch(1);
    AtomicInteger asked = new AtomicInteger();
    List<Future<Integer>> crowd = new ArrayList<>();
    crowd.add(people.submit(() -> turns.take(() -> lastToTheEnd(begun))));
    begun.await();
    for (int i = 0; i < MOST_WAITING; i++) {
      crowd.add(people.submit(() -> turns.take(asked::incrementAndGet)));
    }
    while (!isCrowded(turns)) {
      Thread.onSpinWait();
    }
    return crowd;
  }

  private int lastToTheEnd(CountDownLatch begun) {
    begun.countDown();
    try {
      end.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return 0;
  }

  private static boolean isCrowded(Turns turns) {
    try {
      turns.refuseIfCrowded();
      return false;
    } catch (Refused sentAway) {
      return true;
    }
  }
}
