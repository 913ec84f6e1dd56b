package vestiary.schedule;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;

@ApplicationScoped
class MassStampRows implements PanacheRepositoryBase<MassStampRow, UUID> {}
