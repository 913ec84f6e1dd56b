package vestiary.assigning;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;

@ApplicationScoped
class AskedRows implements PanacheRepositoryBase<AskedRow, UUID> {}
