package vestiary.users;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class SessionRows implements PanacheRepositoryBase<SessionRow, UUID> {

  Optional<SessionRow> findOpen(String fingerprint, Instant now) {
    return find("fingerprint = ?1 and endsAt > ?2", fingerprint, now).firstResultOptional();
  }

  void end(String fingerprint) {
    delete("fingerprint", fingerprint);
  }

  void endAll(UUID user) {
    delete("userId", user);
  }

  long countOpen(UUID user, Instant now) {
    return count("userId = ?1 and endsAt > ?2", user, now);
  }
}
