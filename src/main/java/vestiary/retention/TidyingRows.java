package vestiary.retention;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class TidyingRows implements PanacheRepositoryBase<TidyingRow, UUID> {

  boolean isDone(LocalDate day) {
    return count("day", day) > 0;
  }

  Optional<TidyingRow> findLast() {
    return find("order by day desc").firstResultOptional();
  }
}
