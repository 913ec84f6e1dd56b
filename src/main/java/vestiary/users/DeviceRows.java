package vestiary.users;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class DeviceRows implements PanacheRepositoryBase<DeviceRow, UUID> {

  Optional<DeviceRow> findOf(UUID user, String fingerprint) {
    return find("userId = ?1 and fingerprint = ?2", user, fingerprint).firstResultOptional();
  }

  boolean isKnown(String fingerprint) {
    return count("fingerprint", fingerprint) > 0;
  }

  void forgetEnded(Instant now) {
    delete("endsAt <= ?1", now);
  }
}
