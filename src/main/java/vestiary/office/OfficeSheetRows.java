package vestiary.office;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

@ApplicationScoped
class OfficeSheetRows implements PanacheRepositoryBase<OfficeSheetRow, UUID> {

  Map<UUID, OfficeSheetRow> of(Collection<UUID> masses) {
    return masses.isEmpty()
        ? Map.of()
        : list("id in ?1", masses).stream()
            .collect(Collectors.toMap(row -> row.id, Function.identity()));
  }
}
