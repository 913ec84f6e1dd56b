package vestiary.telling;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.UUID;

@ApplicationScoped
class SacristyChangeRows implements PanacheRepositoryBase<SacristyChangeRow, UUID> {

  /** The first first; for one to tell, while others wait. */
  List<SacristyChangeRow> allLocked() {
    return find("order by at, id").withLock(LockModeType.PESSIMISTIC_WRITE).list();
  }
}
