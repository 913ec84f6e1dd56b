package vestiary.plan;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * Lets a request wait for a plan: woken by this copy's work, and looking now and then for others'.
 */
@ApplicationScoped
class PlanWatch {

  private static final long LOOK_AGAIN_MILLIS = 500;

  private final Object bell = new Object();

  /** Something about some plan was written. */
  void announce() {
    synchronized (bell) {
      bell.notifyAll();
    }
  }

  /** Looks until it is good, or the time is over; then the last look is the answer. */
  <T> T await(Supplier<T> look, Predicate<T> isGood, Duration longest) {
    long end = System.nanoTime() + longest.toNanos();
    T seen = look.get();
    while (!isGood.test(seen) && System.nanoTime() < end) {
      pause(Math.min(LOOK_AGAIN_MILLIS, Math.max(1, (end - System.nanoTime()) / 1_000_000)));
      seen = look.get();
    }
    return seen;
  }

  private void pause(long millis) {
    try {
      synchronized (bell) {
        bell.wait(millis);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
