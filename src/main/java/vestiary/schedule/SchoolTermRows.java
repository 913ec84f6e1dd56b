package vestiary.schedule;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.UUID;

@ApplicationScoped
class SchoolTermRows implements PanacheRepositoryBase<SchoolTermRow, UUID> {

  List<SchoolTermRow> inOrder() {
    return list("order by starts, name");
  }
}
