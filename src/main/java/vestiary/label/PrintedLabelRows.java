package vestiary.label;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

@ApplicationScoped
class PrintedLabelRows implements PanacheRepositoryBase<PrintedLabelRow, UUID> {

  Set<String> codes() {
    return streamAll().map(row -> row.code).collect(Collectors.toSet());
  }
}
