package vestiary.exchange;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.UUID;

@ApplicationScoped
class ImportFileRows implements PanacheRepositoryBase<ImportFileRow, UUID> {

  long deleteExpired(Instant now) {
    return delete("expiresAt < ?1", now);
  }
}
