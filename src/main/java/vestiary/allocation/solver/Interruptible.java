package vestiary.allocation.solver;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;

/**
 * Lets a library that cannot be asked to look up now and then be stopped all the same. It runs
 * beside, so that whoever knows whether to stop is asked by the thread that called.
 */
final class Interruptible {

  private static final long MILLISECONDS_BETWEEN_QUESTIONS = 200;

  private Interruptible() {}

  /**
   * Runs to the end, which comes soon after it is stopped.
   *
   * @param stop may be called more than once, and before the run has begun
   */
  static void run(Runnable run, Runnable stop, BooleanSupplier isCancelled) {
    FutureTask<Void> task = new FutureTask<>(run, null);
    Thread beside = new Thread(task, "solver");
    beside.setDaemon(true);
    beside.start();
    boolean interrupted = false;
    RuntimeException fault = null;
    while (!isOver(task)) {
      interrupted |= Thread.interrupted();
      try {
        if (fault != null || interrupted || isCancelled.getAsBoolean()) {
          stop.run();
        }
      } catch (RuntimeException unknown) {
        // Whoever called may throw the library's memory away, so the run must be over before.
        fault = unknown;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
    if (fault != null) {
      throw fault;
    }
  }

  private static boolean isOver(FutureTask<Void> task) {
    try {
      task.get(MILLISECONDS_BETWEEN_QUESTIONS, TimeUnit.MILLISECONDS);
      return true;
    } catch (TimeoutException notYet) {
      return false;
    } catch (InterruptedException asked) {
      Thread.currentThread().interrupt();
      return false;
    } catch (ExecutionException fault) {
      if (fault.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw new IllegalStateException(fault.getCause());
    }
  }
}
