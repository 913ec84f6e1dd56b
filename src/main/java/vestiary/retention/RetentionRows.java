package vestiary.retention;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;

@ApplicationScoped
class RetentionRows implements PanacheRepositoryBase<RetentionRow, UUID> {}
