package vestiary.people;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;

@ApplicationScoped
class MinistryRows implements PanacheRepositoryBase<MinistryRow, UUID> {}
