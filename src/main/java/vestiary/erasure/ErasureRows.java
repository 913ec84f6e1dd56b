package vestiary.erasure;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;

@ApplicationScoped
class ErasureRows implements PanacheRepositoryBase<ErasureRow, UUID> {}
