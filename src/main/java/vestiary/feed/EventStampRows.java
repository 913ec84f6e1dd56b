package vestiary.feed;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Collection;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

@ApplicationScoped
class EventStampRows implements PanacheRepositoryBase<EventStampRow, UUID> {

  Map<UUID, EventStampRow> byId(Collection<UUID> ids) {
    return ids.isEmpty()
        ? Map.of()
        : list("id in ?1", ids).stream()
            .collect(Collectors.toMap(row -> row.id, Function.identity()));
  }

  /**
   * Counts on where the digest is another; in one step, since two programs may ask at the same
   * moment.
   */
  void count(UUID cluster, UUID id, String digest, Instant now, Instant ends) {
    getEntityManager()
        .createNativeQuery(
            """
            insert into event_stamp (cluster_id, id, sequence, changed_at, ends_at, digest)
            values (?1, ?2, 0, ?3, ?4, ?5)
            on conflict (cluster_id, id) do update
            set sequence = event_stamp.sequence + 1, changed_at = excluded.changed_at,
                ends_at = excluded.ends_at, digest = excluded.digest
            where event_stamp.digest <> excluded.digest
            """)
        .setParameter(1, cluster)
        .setParameter(2, id)
        .setParameter(3, now)
        .setParameter(4, ends)
        .setParameter(5, digest)
        .executeUpdate();
  }

  void forget(Instant endedBefore) {
    delete("endsAt < ?1", endedBefore);
  }
}
