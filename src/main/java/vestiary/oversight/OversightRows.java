package vestiary.oversight;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class OversightRows implements PanacheRepositoryBase<OversightRow, UUID> {

  /** Who may look into that cluster, those let in first before others. */
  List<OversightRow> into(UUID cluster) {
    return list("clusterId = ?1 order by grantedAt, id", cluster);
  }

  Optional<OversightRow> find(UUID cluster, UUID overseer) {
    return find("clusterId = ?1 and overseerId = ?2", cluster, overseer).firstResultOptional();
  }

  /** Where a user of that cluster may look. */
  List<OversightRow> of(UUID home, UUID overseer) {
    return list("homeId = ?1 and overseerId = ?2 order by grantedAt, id", home, overseer);
  }

  boolean forget(UUID cluster, UUID id) {
    return delete("clusterId = ?1 and id = ?2", cluster, id) > 0;
  }
}
