package vestiary.cluster;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import io.quarkus.panache.common.Sort;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

@ApplicationScoped
class ChurchRows implements PanacheRepositoryBase<ChurchRow, UUID> {

  List<ChurchRow> inOrder() {
    return listAll(Sort.by("position").and("slug"));
  }

  Optional<ChurchRow> findBySlug(String slug) {
    return find("slug", slug).firstResultOptional();
  }

  ChurchRow getBySlug(String slug) {
    return findBySlug(slug).orElseThrow(() -> new Refused(new Refusal.NotThere("church", slug)));
  }

  /** Makes forms outdated that show this church with what was just changed around it. */
  void touch(ChurchRow church) {
    getEntityManager().lock(church, LockModeType.OPTIMISTIC_FORCE_INCREMENT);
  }
}
