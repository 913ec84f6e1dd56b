package vestiary.users;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class TokenRows implements PanacheRepositoryBase<TokenRow, UUID> {

  /**
   * One that has not ended.
   *
   * @param feed whether it is the key of a feed, which opens nothing else
   */
  Optional<TokenRow> findGood(String fingerprint, boolean feed, Instant now) {
    return find("fingerprint = ?1 and feed = ?2 and endsAt > ?3", fingerprint, feed, now)
        .firstResultOptional();
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
