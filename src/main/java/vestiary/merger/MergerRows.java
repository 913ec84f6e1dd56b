package vestiary.merger;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.UUID;

@ApplicationScoped
class MergerRows implements PanacheRepositoryBase<MergerRow, UUID> {

  List<MergerRow> newestFirst() {
    return list("order by notedAt desc, id desc");
  }

  List<MergerRow> of(UUID church) {
    return list("churchId = ?1 order by notedAt desc, id desc", church);
  }
}
