package vestiary.history;

import io.quarkus.hibernate.orm.panache.PanacheQuery;
import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

@ApplicationScoped
class AuditRows implements PanacheRepositoryBase<AuditRow, UUID> {

  /** The newest first; so many are passed over, and so many come at most. */
  List<AuditRow> newest(Sift sift, int passed, int most) {
    return found(sift).range(passed, passed + most - 1).list();
  }

  private PanacheQuery<AuditRow> found(Sift sift) {
    StringBuilder query = new StringBuilder("at >= :from and at < :to");
    Map<String, Object> values = new HashMap<>(Map.of("from", sift.from(), "to", sift.to()));
    if (!sift.concern().isEmpty()) {
      query.append(" and array_contains(about, :about)");
      values.put("about", UUID.fromString(sift.concern()));
    }
    if (!sift.isByAnybody()) {
      query.append(" and (visitor = :who or device = :who and :who <> '')");
      values.put("who", sift.mark());
    }
    return find(query.append(" order by at desc, id desc").toString(), values);
  }
}
