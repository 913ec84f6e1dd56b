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

  void forget(Instant endedBefore) {
    delete("endsAt < ?1", endedBefore);
  }
}
