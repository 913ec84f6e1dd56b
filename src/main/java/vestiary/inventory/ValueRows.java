package vestiary.inventory;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;

@ApplicationScoped
class ValueRows implements PanacheRepositoryBase<ValueRow, UUID> {}
