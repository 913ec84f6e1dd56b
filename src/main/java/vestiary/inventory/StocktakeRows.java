package vestiary.inventory;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

@ApplicationScoped
class StocktakeRows implements PanacheRepositoryBase<StocktakeRow, UUID> {

  /** Those under way first, then the newest inventory. */
  List<StocktakeRow> newestFirst() {
    return list("order by heldOn desc nulls first, begunAt desc, id");
  }

  Optional<StocktakeRow> findOpen(UUID church) {
    return find("churchId = ?1 and closedAt is null", church).firstResultOptional();
  }

  StocktakeRow get(String id) {
    return findByIdOptional(Asked.id("stocktake", id))
        .orElseThrow(() -> new Refused(new Refusal.NotThere("stocktake", id)));
  }
}
