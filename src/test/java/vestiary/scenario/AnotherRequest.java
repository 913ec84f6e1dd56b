package vestiary.scenario;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/** Work on a thread of its own, so that it shares no request with the test that asks for it. */
final class AnotherRequest {

  private AnotherRequest() {}

  static void run(Runnable work) {
    try {
      CompletableFuture.runAsync(work, task -> new Thread(task).start()).join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof RuntimeException failure) {
        throw failure;
      }
      throw e;
    }
  }
}
