package vestiary.people;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

@ApplicationScoped
class AbsenceRows implements PanacheRepositoryBase<AbsenceRow, UUID> {

  /** Those that meet that time, by their beginning. */
  List<AbsenceRow> between(Instant from, Instant until) {
    return list("starts < ?1 and (ends is null or ends > ?2) order by starts, id", until, from);
  }

  /** Those of one person that are not over at that moment, by their beginning. */
  List<AbsenceRow> since(UUID person, Instant moment) {
    return list(
        "personId = ?1 and (ends is null or ends > ?2) order by starts, id", person, moment);
  }

  /** One of the very same time. */
  Optional<AbsenceRow> findSame(UUID person, Instant starts, Instant ends) {
    return list("personId = ?1 and starts = ?2", person, starts).stream()
        .filter(row -> Objects.equals(row.ends, ends))
        .findFirst();
  }

  /** That of a person which an address names. */
  AbsenceRow get(UUID person, String id) {
    return find("id = ?1 and personId = ?2", Asked.id("absence", id), person)
        .firstResultOptional()
        .orElseThrow(() -> new Refused(new Refusal.NotThere("absence", id)));
  }
}
