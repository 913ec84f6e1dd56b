package vestiary.times;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class PublishedTimesRows implements PanacheRepositoryBase<PublishedTimesRow, UUID> {

  /** What holds; empty before anything was published. */
  Optional<PublishedTimesRow> findLast() {
    return find("order by turn desc").firstResultOptional();
  }

  /** What was published before it is of no use. */
  void forgetBefore(int turn) {
    delete("turn < ?1", turn);
  }
}
