package vestiary.proper;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;

@ApplicationScoped
class ProperChurchRows implements PanacheRepositoryBase<ProperChurchRow, UUID> {}
