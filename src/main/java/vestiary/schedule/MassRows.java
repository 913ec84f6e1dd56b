package vestiary.schedule;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class MassRows implements PanacheRepositoryBase<MassRow, UUID> {

  /** Those that begin in the span, its end not included, by start. */
  List<MassRow> between(Instant from, Instant to) {
    return list("starts >= ?1 and starts < ?2 and not cancelled order by starts, id", from, to);
  }

  /** Those that begin in the span or usually would, cancelled ones of a pattern too. */
  List<MassRow> announced(Instant from, Instant to) {
    return list(
        "(starts >= ?1 and starts < ?2 and not cancelled)"
            + " or (usualStarts >= ?1 and usualStarts < ?2)"
            + " order by coalesce(usualStarts, starts), id",
        from,
        to);
  }

  /** Those of a pattern that are cancelled or moved, out of the span, within it or into it. */
  List<MassRow> departing(Instant from, Instant to) {
    return list(
        "(cancelled or starts <> usualStarts or churchId <> usualChurchId)"
            + " and (usualStarts >= ?1 and usualStarts < ?2"
            + " or usualStarts is not null and not cancelled and starts >= ?1 and starts < ?2)"
            + " order by usualStarts, id",
        from,
        to);
  }

  Optional<MassRow> findAt(UUID church, Instant start) {
    return find("churchId = ?1 and starts = ?2 and not cancelled order by id", church, start)
        .firstResultOptional();
  }
}
