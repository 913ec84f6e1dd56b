package vestiary.exchange;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

@ApplicationScoped
class MassOriginRows implements PanacheRepositoryBase<MassOriginRow, UUID> {

  /** Those of these events, by event and instance. */
  Map<CalendarMass.Origin, MassOriginRow> of(Collection<String> uids) {
    return list("uid in ?1", uids).stream()
        .collect(
            Collectors.toMap(row -> new CalendarMass.Origin(row.uid, row.instance), row -> row));
  }
}
