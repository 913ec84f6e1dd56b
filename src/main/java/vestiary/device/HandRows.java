package vestiary.device;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.UUID;

@ApplicationScoped
class HandRows implements PanacheRepositoryBase<HandRow, UUID> {

  List<HandRow> of(UUID church) {
    return list("churchId = ?1 order by id", church);
  }
}
