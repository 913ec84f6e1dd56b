package vestiary.telling;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.persistence.LockModeType;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.function.Consumer;
import vestiary.problem.RaceLost;

/** Changes of one kind, until they are told. */
interface ChangeRows<C extends Change> extends PanacheRepositoryBase<C, UUID> {

  /**
   * Tells those of the present cluster together, once it is time, and forgets them in the same
   * transaction; whoever else is at it meanwhile does nothing.
   *
   * @param tell given all of them, the first first; never none
   */
  default void tellOnce(Instant now, Consumer<List<C>> tell) {
    try {
      QuarkusTransaction.requiringNew().run(() -> tellIfQuiet(now, tell));
    } catch (RuntimeException failure) {
      if (!RaceLost.isBehind(failure)) {
        throw failure;
      }
    }
  }

  private void tellIfQuiet(Instant now, Consumer<List<C>> tell) {
    if (count() == 0) {
      return;
    }
    List<C> changes = find("order by at, id").withLock(LockModeType.PESSIMISTIC_WRITE).<C>list();
    if (changes.isEmpty()
        || !Quiet.since(changes.get(0).at(), changes.get(changes.size() - 1).at(), now)) {
      return;
    }
    tell.accept(changes);
    delete("id in ?1", changes.stream().map(Change::id).toList());
  }
}
