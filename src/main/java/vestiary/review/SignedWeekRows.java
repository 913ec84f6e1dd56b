package vestiary.review;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class SignedWeekRows implements PanacheRepositoryBase<SignedWeekRow, UUID> {

  /** All signatures of a week, the last first. */
  List<SignedWeekRow> of(LocalDate monday) {
    return list("monday = ?1 order by turn desc", monday);
  }

  /** The last signature of a week; empty if nobody has signed it. */
  Optional<SignedWeekRow> findLast(LocalDate monday) {
    return find("monday = ?1 order by turn desc", monday).firstResultOptional();
  }
}
