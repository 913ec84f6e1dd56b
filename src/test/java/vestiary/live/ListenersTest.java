package vestiary.live;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.smallrye.mutiny.Multi;
import io.smallrye.mutiny.subscription.Cancellable;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** The more pages are open, the longer they take to look again, one after the other. */
class ListenersTest {

  private final Listeners listeners = new Listeners();
  private final UUID cluster = UUID.randomUUID();

  @Test
  void pages_are_counted_while_they_listen_and_by_cluster() {
    List<Cancellable> open = new ArrayList<>();
    for (int page = 0; page < 200; page++) {
      Multi<Object> stream = listeners.counted(cluster, Multi.createFrom().nothing());
      open.add(stream.subscribe().with(heard -> {}));
    }

    assertEquals(5_000, listeners.spreadMillis(cluster));
    assertEquals(400, listeners.spreadMillis(UUID.randomUUID()));

    open.forEach(Cancellable::cancel);

    assertEquals(400, listeners.spreadMillis(cluster));
  }

  @Test
  void nobody_waits_longer_than_twenty_seconds() {
    assertEquals(20_000, Listeners.spreadMillis(100_000));
  }
}
