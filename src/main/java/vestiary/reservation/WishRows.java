package vestiary.reservation;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

@ApplicationScoped
class WishRows implements PanacheRepositoryBase<WishRow, UUID> {

  /**
   * The one that an address names.
   *
   * @throws Refused if there is none
   */
  WishRow get(String id) {
    return findByIdOptional(Asked.id("wish", id)).orElseThrow(() -> notThere(id));
  }

  /**
   * The one that an address names; waits until nobody else changes it.
   *
   * @throws Refused if there is none
   */
  WishRow getLocked(String id) {
    return find("id = ?1", Asked.id("wish", id))
        .withLock(LockModeType.PESSIMISTIC_WRITE)
        .firstResultOptional()
        .orElseThrow(() -> notThere(id));
  }

  /** Those not taken back and asked since then, the first asked first. */
  List<WishRow> since(Instant moment) {
    return list("state <> 'withdrawn' and askedAt >= ?1 order by askedAt, id", moment);
  }

  /**
   * Those who are still to be told when it becomes free, the first asked first; for one to tell.
   */
  List<WishRow> waitingLocked() {
    return find("toldAt is null and state in ('open', 'refused') order by askedAt, id")
        .withLock(LockModeType.PESSIMISTIC_WRITE)
        .list();
  }

  /** What somebody was told since then to be free, and has neither taken nor given up. */
  Set<UUID> toldSince(Instant moment) {
    return list("toldAt > ?1 and state in ('open', 'refused')", moment).stream()
        .map(WishRow::thing)
        .collect(Collectors.toCollection(HashSet::new));
  }

  /** Whoever has it waits for it no more. */
  void fulfil(ReservationRow made, Instant now) {
    update(
        "state = 'granted', answeredAt = ?1, answeredBy = ?2 where massId = ?3"
            + " and state in ('open', 'refused') and coalesce(setId, pieceId) = ?4",
        now,
        made.madeBy,
        made.massId,
        made.thing());
  }

  private static Refused notThere(String id) {
    return new Refused(new Refusal.NotThere("wish", id));
  }
}
