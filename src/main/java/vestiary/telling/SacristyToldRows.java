package vestiary.telling;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;

@ApplicationScoped
class SacristyToldRows implements PanacheRepositoryBase<SacristyToldRow, UUID> {}
