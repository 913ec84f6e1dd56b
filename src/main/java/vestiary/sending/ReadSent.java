package vestiary.sending;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import vestiary.pool.ReadPool;

/** What went out, and how it came back. */
@ApplicationScoped
@Transactional
public class ReadSent {

  private final SentPieceRows rows;
  private final ReadPool pool;
  private final Clock clock;

  ReadSent(SentPieceRows rows, ReadPool pool, Clock clock) {
    this.rows = rows;
    this.pool = pool;
    this.clock = clock;
  }

  /** Every time that a piece of the item went out, the latest first, then by code. */
  public List<Sent> of(Item item) {
    List<UUID> ids = item.codes().stream().map(pool::id).toList();
    return rows.of(ids).stream().map(Sent::of).toList();
  }

  /** What is out, what is due first at the head, then by code. */
  public List<Sent> open() {
    return rows.open().stream()
        .map(Sent::of)
        .sorted(Comparator.comparing(Sent::due).thenComparing(Sent::code))
        .toList();
  }

  /** What is out and should be back by now, likewise. */
  public List<Sent> overdue() {
    Instant now = clock.instant();
    return open().stream().filter(one -> one.isOverdue(now)).toList();
  }

  /** What went to another than its owner, the latest first. */
  public List<Sent> loans() {
    return rows.loans().stream().map(Sent::of).toList();
  }
}
