package vestiary.users;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class TokenRows implements PanacheRepositoryBase<TokenRow, UUID> {

  Optional<TokenRow> findGood(String fingerprint, Instant now) {
    return find("fingerprint = ?1 and endsAt > ?2", fingerprint, now).firstResultOptional();
  }

  List<TokenRow> of(UUID user) {
    return list("userId = ?1 order by madeAt, id", user);
  }

  /** Whether it was there, and that user’s. */
  boolean end(UUID id, UUID user) {
    return delete("id = ?1 and userId = ?2", id, user) > 0;
  }

  void endAll(UUID user) {
    delete("userId", user);
  }
}
