package vestiary.users;

import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/**
 * Lets a few at a time do what costs much, in the order in which they came. Whoever would have to
 * wait for long is sent away at once, to come again.
 */
final class Turns {

  private static final int MOST_WAITING = 10;
  static final Duration LONGEST_WAIT = Duration.ofSeconds(5);

  private final Semaphore free;
  private final int rest;

  /**
   * @param atATime how many at a time
   * @param rest so many times as long as a turn took, nobody takes its place while others wait, so
   *     that a crowd never has the machine to itself
   */
  Turns(int atATime, int rest) {
    this.free = new Semaphore(atATime, true);
    this.rest = rest;
  }

  /**
   * Does the work in its turn.
   *
   * @throws Refused if too many wait already, with when to come again
   */
  <T> T take(Supplier<T> work) {
    refuseIfCrowded();
    if (!gotTurn()) {
      throw new Refused(new Refusal.TooOften(LONGEST_WAIT));
    }
    long start = System.nanoTime();
    try {
      return work.get();
    } finally {
      release(System.nanoTime() - start);
    }
  }

  /**
   * Looks before anything else is done for somebody who would be sent away.
   *
   * @throws Refused if too many wait already
   */
  void refuseIfCrowded() {
    if (isCrowded()) {
      throw new Refused(new Refusal.TooOften(LONGEST_WAIT));
    }
  }

  /** Whether too many wait already. */
  boolean isCrowded() {
    return free.getQueueLength() >= MOST_WAITING;
  }

  private void release(long taken) {
    if (rest == 0 || !free.hasQueuedThreads()) {
      free.release();
    } else {
      CompletableFuture.delayedExecutor(rest * taken, TimeUnit.NANOSECONDS).execute(free::release);
    }
  }

  private boolean gotTurn() {
    try {
      return free.tryAcquire(LONGEST_WAIT.toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
