package vestiary.proper;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import vestiary.problem.Refused;
import vestiary.vesting.ChurchId;

@ApplicationScoped
class ProperRows implements PanacheRepositoryBase<ProperRow, UUID> {

  private static final String WITH_CHURCHES =
      """
      select p, c.churchId from ProperRow p left join ProperChurchRow c on c.properId = p.id
      order by p.slug, c.id
      """;

  /** All of them with their churches, by id, in one query. */
  List<EnteredProper> entered() {
    Map<ProperRow, List<ChurchId>> churches = new LinkedHashMap<>();
    for (Object[] found :
        getEntityManager().createQuery(WITH_CHURCHES, Object[].class).getResultList()) {
      List<ChurchId> bound =
          churches.computeIfAbsent((ProperRow) found[0], row -> new ArrayList<>());
      if (found[1] != null) {
        bound.add(new ChurchId((UUID) found[1]));
      }
    }
    return churches.entrySet().stream().map(e -> e.getKey().toEntered(e.getValue())).toList();
  }

  /** Makes forms outdated that show it, even if nothing but its churches changes. */
  void touch(ProperRow proper) {
    getEntityManager().lock(proper, LockModeType.OPTIMISTIC_FORCE_INCREMENT);
  }

  ProperRow getBySlug(String slug) {
    return find("slug", slug)
        .firstResultOptional()
        .orElseThrow(() -> new Refused(ReadPropers.notThere(slug)));
  }
}
