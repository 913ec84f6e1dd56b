package vestiary.users;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class OutsideSignInRows implements PanacheRepositoryBase<OutsideSignInRow, UUID> {

  Optional<OutsideSignInRow> findBegun(String fingerprint, Instant now) {
    return find("fingerprint = ?1 and endsAt > ?2", fingerprint, now).firstResultOptional();
  }

  void forgetEnded(Instant now) {
    delete("endsAt <= ?1", now);
  }
}
