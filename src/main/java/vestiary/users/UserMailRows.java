package vestiary.users;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class UserMailRows implements PanacheRepositoryBase<UserMailRow, UUID> {

  /** The one whose address that link proves, while it is good. */
  Optional<UserMailRow> findToProve(String fingerprint, Instant now) {
    return find("fingerprint = ?1 and endsAt > ?2", fingerprint, now).firstResultOptional();
  }
}
