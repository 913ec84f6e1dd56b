package vestiary.cluster;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import io.quarkus.panache.common.Sort;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class ChurchRows implements PanacheRepositoryBase<ChurchRow, UUID> {

  List<ChurchRow> inOrder() {
    return listAll(Sort.by("position").and("slug"));
  }

  Optional<ChurchRow> findBySlug(String slug) {
    return find("slug", slug).firstResultOptional();
  }
}
