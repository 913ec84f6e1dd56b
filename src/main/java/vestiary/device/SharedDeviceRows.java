package vestiary.device;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

@ApplicationScoped
class SharedDeviceRows implements PanacheRepositoryBase<SharedDeviceRow, UUID> {

  /** Those that stay signed in, by name. */
  List<SharedDeviceRow> open() {
    return list("endedAt is null order by lower(name), id");
  }

  Optional<SharedDeviceRow> findOpen(String fingerprint) {
    return find("fingerprint = ?1 and endedAt is null", fingerprint).firstResultOptional();
  }

  SharedDeviceRow getOpen(String id) {
    return find("id = ?1 and endedAt is null", Asked.id("device", id))
        .firstResultOptional()
        .orElseThrow(() -> new Refused(new Refusal.NotThere("device", id)));
  }
}
