package vestiary.users;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class LinkRows implements PanacheRepositoryBase<LinkRow, UUID> {

  Optional<LinkRow> findGood(String fingerprint, Instant now) {
    return find("fingerprint = ?1 and endsAt > ?2", fingerprint, now).firstResultOptional();
  }

  void forget(UUID user) {
    delete("userId", user);
  }
}
