package vestiary.serving;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

@ApplicationScoped
class ServingRows implements PanacheRepositoryBase<ServingRow, UUID> {

  /** Far fewer than the parameters that one statement may have. */
  private static final int AT_ONCE = 1_000;

  List<ServingRow> at(List<UUID> masses) {
    List<ServingRow> found = new ArrayList<>();
    for (int from = 0; from < masses.size(); from += AT_ONCE) {
      List<UUID> some = masses.subList(from, Math.min(masses.size(), from + AT_ONCE));
      found.addAll(list("massId in ?1", some));
    }
    return found;
  }

  Optional<ServingRow> find(UUID mass, UUID person) {
    return find("massId = ?1 and personId = ?2", mass, person).firstResultOptional();
  }
}
