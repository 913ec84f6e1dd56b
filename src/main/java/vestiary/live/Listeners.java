package vestiary.live;

import io.smallrye.mutiny.Multi;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * How many pages are open in each cluster, so that after a change they do not all look again in the
 * same moment.
 */
@ApplicationScoped
class Listeners {

  /** What one page costs the server, generously. */
  private static final int MILLIS_A_PAGE = 25;

  /** Sooner nobody needs to know, later somebody would act on what is past. */
  private static final int SHORTEST_MILLIS = 400;

  private static final int LONGEST_MILLIS = 20_000;

  private final Map<UUID, AtomicInteger> open = new ConcurrentHashMap<>();

  /** The same stream, counted while somebody listens to it. */
  <T> Multi<T> counted(UUID cluster, Multi<T> stream) {
    AtomicInteger own = open.computeIfAbsent(cluster, unknown -> new AtomicInteger());
    return stream
        .onSubscription()
        .invoke(own::incrementAndGet)
        .onTermination()
        .invoke(own::decrementAndGet);
  }

  /** Over how many milliseconds the open pages of a cluster do well to look again. */
  int spreadMillis(UUID cluster) {
    AtomicInteger own = open.get(cluster);
    return spreadMillis(own == null ? 0 : own.get());
  }

  static int spreadMillis(int pages) {
    return Math.min(LONGEST_MILLIS, Math.max(SHORTEST_MILLIS, pages * MILLIS_A_PAGE));
  }
}
