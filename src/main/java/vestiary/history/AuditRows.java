package vestiary.history;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.UUID;

@ApplicationScoped
class AuditRows implements PanacheRepositoryBase<AuditRow, UUID> {

  /** The newest first, so many at most. */
  List<AuditRow> newest(int most) {
    return find("order by at desc, id desc").page(0, most).list();
  }

  /** Of one thing, the newest first. */
  List<AuditRow> of(UUID row, int most) {
    return find("rowId = ?1 order by at desc, id desc", row).page(0, most).list();
  }

  /** By one person, the newest first. */
  List<AuditRow> by(String visitor, int most) {
    return find("visitor = ?1 order by at desc, id desc", visitor).page(0, most).list();
  }
}
