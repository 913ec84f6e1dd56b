package vestiary.backup;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class TakenBackupRows implements PanacheRepositoryBase<TakenBackupRow, UUID> {

  /** The newest; empty before the first. */
  Optional<TakenBackupRow> newest() {
    return find("order by at desc, id desc").firstResultOptional();
  }
}
