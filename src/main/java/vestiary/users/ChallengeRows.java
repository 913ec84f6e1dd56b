package vestiary.users;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.UUID;

@ApplicationScoped
class ChallengeRows implements PanacheRepositoryBase<ChallengeRow, UUID> {

  /** Takes it away; whether it was there and good, for exactly that use. */
  boolean useUp(String fingerprint, UUID user, Instant now) {
    long gone =
        user == null
            ? delete("fingerprint = ?1 and userId is null and endsAt > ?2", fingerprint, now)
            : delete("fingerprint = ?1 and userId = ?2 and endsAt > ?3", fingerprint, user, now);
    return gone == 1;
  }

  void forgetEnded(Instant now) {
    delete("endsAt <= ?1", now);
  }
}
